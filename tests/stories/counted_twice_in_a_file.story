# A count that stands twice in a file is counted once and asked about

Given again, the file counts nobody anew.

## from a file
visit 2026-10-27
today hinds
12 heifers, far yard, all good
412 nothing found
12 heifers, far yard, all good
done

## the same file again

## answered
told: today's feet: LH RH
saved 12 heifers
told 12 heifers: far yard, LH RH lifted, 12 with nothing found
saved 412
refused line 4: 12 heifers, far yard, were counted at this visit already. Others, once more so many: say the line again now. The same: "never mind".
mark: no cow is in the crush
there already 12 heifers
there already 412
refused line 4: 12 heifers, far yard, were counted at this visit already. Others, once more so many: say the line again now. The same: "never mind".
mark: no cow is in the crush

## counted
12 heifers, far yard: both hind feet lifted, nothing found on 12

## ended
news_unclear 12 heifers: "12 heifers, far yard, all good": 12 heifers, far yard, were counted at this visit already. Are they others, or the same?
