# Animals that were counted once more by mistake are said to be so, and stand in the count once

"12 heifers counted twice" takes the later of two counts back; with a count at another place the place is
said as well. Counted once, there is nothing to take back.

## said
visit 2026-10-27
today hinds
12 heifers, far yard, all good
12 heifers, far yard, all good
12 heifers, far yard, all good
12 heifers counted twice
12 heifers counted twice
8 cows, dry pen, all good
8 cows, dry pen, all good
8 cows, dry pen, all good
8 cows, old shed, all trimmed
8 cows counted twice
8 cows, dry pen, counted twice

## answered
told: today's feet: LH RH
saved 12 heifers
told 12 heifers: far yard, LH RH lifted, 12 with nothing found
refused line 3: 12 heifers, far yard, were counted at this visit already. Others, once more so many: say the line again now. The same: "never mind".
saved 12 heifers
told 12 heifers: far yard, LH RH lifted, 12 with nothing found
saved 12 heifers
told 12 heifers: counted twice, this one counts no more: far yard, LH RH lifted, 12 with nothing found
refused line 6: 12 heifers are not counted twice at this visit, or at more than one place. Say how many and where they stand, as they were counted: "12 heifers, ..., counted twice".
saved 8 cows
told 8 cows: dry pen, LH RH lifted, 8 with nothing found
refused line 8: 8 cows, dry pen, were counted at this visit already. Others, once more so many: say the line again now. The same: "never mind".
saved 8 cows
told 8 cows: dry pen, LH RH lifted, 8 with nothing found
saved 8 cows
told 8 cows: old shed, LH RH lifted, 8 trimmed
refused line 11: 8 cows are not counted twice at this visit, or at more than one place. Say how many and where they stand, as they were counted: "8 cows, ..., counted twice".
saved 8 cows
told 8 cows: counted twice, this one counts no more: dry pen, LH RH lifted, 8 with nothing found

## counted
12 heifers, far yard: both hind feet lifted, nothing found on 12
8 cows, dry pen: both hind feet lifted, nothing found on 8
8 cows, old shed: both hind feet lifted, 8 trimmed

## ended
