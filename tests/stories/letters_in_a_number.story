# A number with letters in it is never the cow of its digits

Neither is news of 4l3 news of 4, nor is what was found on 4l5 found on 4. Nobody has to be asked
about what is said again as it should be.

## given
visit 2026-10-13
today hinds
4 nothing found
413 nothing found
done

## from a file
visit 2026-10-27
today hinds
4l3 gone
413 gone
4l2 gone
4l5 lame LH
LH outside sole ulcer middle, bad
rest fine
done

## answered
told: today's feet: LH RH
refused line 2: "4l3" is not the number of a cow; a cow is digits only: say the number again, 413 if that is meant
told 413: kept as gone
refused line 4: "4l2" is not the number of a cow; a cow is digits only: say the number again, 412 if that is meant
refused line 5: "4l5" is not the number of a cow; a cow is digits only: say the number again, 415 if that is meant
saved no number
saved 4l5

## recorded
no number | unfinished: "4l2 gone" was not understood
4l5 | LH outside SU sole_middle bad | fine RH | unfinished: "4l5 lame LH" was not understood

## ended
unnumbered 4l5: Which number has she: 4l5?
unnumbered no number: Which number has she?
unfinished 4l5: Her turn was not finished: "4l5 lame LH" was not understood
unfinished no number: Her turn was not finished: "4l2 gone" was not understood
