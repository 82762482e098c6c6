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

## on tablet B

## said
visit 2026-10-27
today all four
412 RH outside bruise middle, slight
414 nothing found
done

## answered

## the tablets meet

## turns

## cow 412

## on tablet A

## turns

## cow 412
