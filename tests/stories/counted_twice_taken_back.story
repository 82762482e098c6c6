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

## counted

## ended
