# A count said twice of one place is asked about, for it may be others or the same

Said once more right behind, it is as many others. That it is the same is said by "never mind".

## said
visit 2026-10-27
today hinds
12 heifers, far yard, all good
12 heifers, far yard, all good
never mind
8 cows, dry pen, all good
8 cows, dry pen, all good
8 cows, dry pen, all good
9 cows, dry pen, all good
9 cows, dry pen, all good
412 nothing found
12 heifers, far yard, all good

## answered
told: today's feet: LH RH
saved 12 heifers
told 12 heifers: far yard, LH RH lifted, 12 with nothing found
refused line 3: 12 heifers, far yard, were counted at this visit already. Others, once more so many: say the line again now. The same: "never mind".
mark 12 heifers: "12 heifers, far yard, all good" is dropped
saved 8 cows
told 8 cows: dry pen, LH RH lifted, 8 with nothing found
refused line 6: 8 cows, dry pen, were counted at this visit already. Others, once more so many: say the line again now. The same: "never mind".
saved 8 cows
told 8 cows: dry pen, LH RH lifted, 8 with nothing found
refused line 8: 8 cows, dry pen, were counted at this visit already. Others, once more so many: say the line again now. The same: "never mind"; the same, as it is said now: "no, 9 cows, dry pen, all good".
saved 9 cows
told 9 cows: dry pen, LH RH lifted, 9 with nothing found
saved 412
refused line 11: 12 heifers, far yard, were counted at this visit already. Others, once more so many: say the line again now. The same: "never mind".

## counted
12 heifers, far yard: both hind feet lifted, nothing found on 12
8 cows, dry pen: both hind feet lifted, nothing found on 8
8 cows, dry pen: both hind feet lifted, nothing found on 8
9 cows, dry pen: both hind feet lifted, nothing found on 9

## ended
