# "No, 421" while she is in the crush changes the cow

The wrap of 421 is then asked about, not that of 412.

## given
visit 2026-10-13
today all four
421 lame RH
RH DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
today all four
412 routine
LH outside bruise middle, slight
no, 421
rest fine
RH wrap came off
done

## answered
told: today's feet: LF RF LH RH
mark 421: put right: all that was called of 412 is hers
ask 421: Wrap on right hind since 13 Oct (14 d): still on? (answer: RH wrap still on / RH wrap came off by itself / RH wrap taken off / RH wrap don't know)
saved 421

## cow 421
cow 421, called 412 on 2026-10-27, then put right
case: SH LH outside, found 1x
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH: outside claw: sole haemorrhage, middle of the sole, slight (SH)
2026-10-27 RH: nothing found; wrap had come off by itself
2026-10-13 LF: nothing found
2026-10-13 RF: nothing found
2026-10-13 LH: nothing found
2026-10-13 RH (lame): digital dermatitis, raw, behind (DD); wrap on

## turns
421: 1
