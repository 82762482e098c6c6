# Two tablets at one visit, without signal, make one record

Both open the visit and see different cows, and both see 412: one lifts her left hind, the other
her right hind. When they meet, both hold the same.

## on tablet B

## on tablet A

## said
visit 2026-10-27
today all four
412 LH DD raw behind
413 nothing found
done

## answered
told: today's feet: LF RF LH RH
saved 412
saved 413

## on tablet B

## said
visit 2026-10-27
today all four
412 RH outside bruise middle, slight
414 nothing found
done

## answered
told: today's feet: LF RF LH RH
saved 412
saved 414

## the tablets meet

## turns
412: 2
413: 1
414: 1

## cow 412
case: SH RH outside, found 1x
case: DD LH, found 1x
2026-10-27 LH: digital dermatitis, raw, behind (DD)
2026-10-27 RH: outside claw: sole haemorrhage, middle of the sole, slight (SH)

## on tablet A

## turns
412: 2
413: 1
414: 1

## cow 412
case: SH RH outside, found 1x
case: DD LH, found 1x
2026-10-27 LH: digital dermatitis, raw, behind (DD)
2026-10-27 RH: outside claw: sole haemorrhage, middle of the sole, slight (SH)
