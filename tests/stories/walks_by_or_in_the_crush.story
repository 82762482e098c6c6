# A cow of whom only is said that she walks sound is news, and never the turn of a cow

Nobody was in the crush, or all was called of the one who was: what follows tells whether 416 came
in. While another cow is being called it could be either, so it is asked, and feet told of next are
not silently hers. A number nobody carries is no news of anybody: her turn is not finished.

## given
visit 2026-10-13
today hinds
416 LH outside bruise middle, slight; watch her walk in 14d
rest fine
417 nothing found
done

## said
visit 2026-10-27
today hinds
416 walks sound
412 LH outside bruise middle, slight
417 walks sound
news 417 walks sound
412 RH nothing found
417 walks sound
LH inside bruise middle, slight
rest fine
499 walks sound
420 nothing found
done

## answered
told: today's feet: LH RH
told 416: closed: watch her walk
refused line 4: Another cow is in the crush. Is this news of 417, or is she the next one? Of one who only walked by say: news 417 walks sound; of the next one her number alone first.
told 417: noted
saved 412
saved 417
saved 499
saved 420

## recorded
412 | LH outside SH sole_middle slight | fine RH
417 | LH inside SH sole_middle slight | fine RH | walks sound
499 | walks sound | unfinished: nothing was said of her feet
420 | fine LH RH

## ended
unfinished 499: Her turn was not finished: nothing was said of her feet

## due 2026-10-27
