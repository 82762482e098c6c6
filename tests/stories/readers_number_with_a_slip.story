# A reader's number with a digit too few is no herd number, and no cow gets what was found of her

It has 15 digits. With 13 or 14 it was read or typed wrong: it is refused, the cow stands in the
crush without a number, and read again it is hers. Twelve digits are a national tag, by which some
herds call their cows.

## said
visit 2026-10-27
today hinds
82600000060001 LH DD raw behind
826000000600012 LH DD raw behind
rest fine
826 0000006003 LH DD raw behind
RH bruise toe, slight
412 nothing found
123450600001 LH DD raw behind
rest fine
done

## answered
told: today's feet: LH RH
refused line 2: "82600000060001" is not the number of a cow: a reader's number has 15 digits, this has 14; read her again, or say her herd number
question 826000000600012: Nobody here carries that electronic number. Which number has she?
refused line 5: "826 0000006003" is not the number of a cow: a reader's number has 15 digits, this has 13; read her again, or say her herd number
saved 826000000600012
mark 826 0000006003: claw not called (right hind sole haemorrhage)
mark 826 0000006003: "826 0000006003 LH DD raw behind" was not understood, nor said again
saved 826 0000006003
saved 412
saved 123450600001

## recorded
826000000600012 | LH DD behind raw | fine RH
826 0000006003 | LH not called | RH SH toe slight | unfinished: "826 0000006003 LH DD raw behind" was not understood
412 | fine LH RH
123450600001 | LH DD behind raw | fine RH

## ended
unnumbered 826 0000006003: Which number has she: 826 0000006003?
unnumbered 826000000600012: Which number has she: 826000000600012?
unfinished 826 0000006003: Her turn was not finished: "826 0000006003 LH DD raw behind" was not understood
lifted_not_called 826 0000006003: Left hind: what was found?
place_not_called 826 0000006003: Right hind, sole haemorrhage: on which claw?
