# Whether she walked by or came in stays asked when feet are told of next and no cow is named

## given
visit 2026-10-13
today hinds
417 nothing found
done

## from a file
visit 2026-10-27
today hinds
412 LH outside bruise middle, slight
417 walks sound
RH bruise middle, slight
rest fine
done

## answered
told: today's feet: LH RH
refused line 3: Another cow is in the crush. Is this news of 417, or is she the next one? Of one who only walked by say: news 417 walks sound; of the next one her number alone first.
saved 412
question: Whose is this? A line before it was not understood.
mark no number: claw not called (right hind sole haemorrhage)
saved no number

## recorded
412 | LH outside SH sole_middle slight
no number | RH SH sole_middle slight | fine LH | unfinished: "417 walks sound" was not understood

## ended
unnumbered no number: Which number has she?
unfinished no number: Her turn was not finished: "417 walks sound" was not understood
lifted_not_called 412: Right hind: not lifted, or what was found?
place_not_called no number: Right hind, sole haemorrhage: on which claw?
news_unclear 417: "417 walks sound": Another cow is in the crush. Is this news of 417, or is she the next one? What holds?

## the same file again

## recorded
412 | LH outside SH sole_middle slight
no number | RH SH sole_middle slight | fine LH | unfinished: "417 walks sound" was not understood
