# A new number said of a cow who carries a block is asked about

The digits came the wrong way round. What is not answered is asked again at the close.

## given
visit 2026-10-06
today hinds
231 RH outside sole ulcer middle, bad; block on inside
rest fine
118 LH DD raw behind
rest fine
done

## said
visit 2026-10-27
today hinds
321 recheck
RH outside sole ulcer middle, slight; block again inside
rest fine
no, 231
done
119 recheck
LH DD chronic behind
rest fine
500 recheck
LH DD chronic behind
rest fine
done

## answered
told: today's feet: LH RH
ask 321: 321 is new here; 231 has a block on right hind. 231 meant? (answer: no, 231 / go ahead)
mark 231: put right: all that was called of 321 is hers
saved 231
ask 119: 119 is new here and came for a recheck. 118 meant? (answer: no, 118 / go ahead)
saved 119
saved 500

## recorded
231 recheck | RH outside SU sole_middle slight; block_again inside | fine LH
119 recheck | LH DD behind chronic | fine RH
500 recheck | LH DD behind chronic | fine RH

## ended
unanswered 119: 119 is new here and came for a recheck. 118 meant?
