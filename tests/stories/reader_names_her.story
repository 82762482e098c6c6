# A reader's number names the cow in whose ear it is, and a cow read twice is asked about

Nobody had told whose number it is. Three weeks later she is the same cow, wrap and all. When the
reader takes her number once more it is likely the next cow who stands there.

## given
visit 2026-10-06
today hinds
276000312312345 LH DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
today hinds
276000312312345 recheck
LH DD chronic behind; wrap taken off
rest fine
done
276000312312345 lame RH
no, 414
RH outside sole ulcer middle, bad
rest fine
done
276000998877665 nothing found
done

## answered
told: today's feet: LH RH
saved 276000312312345
ask 276000312312345: The reader gave 276000312312345, who was in the crush today already. Is it her? (answer: go ahead)
mark 414: put right: all that was called of 276000312312345 is hers
saved 414
question 276000998877665: Nobody here carries that electronic number. Which number has she?
saved 276000998877665

## recorded
276000312312345 recheck | LH DD behind chronic; wrap_off | fine RH
414 lame RH | RH outside SU sole_middle bad | fine LH
276000998877665 | fine LH RH

## ended
unnumbered 276000312312345: Which number has she: 276000312312345?
unnumbered 276000998877665: Which number has she: 276000998877665?
