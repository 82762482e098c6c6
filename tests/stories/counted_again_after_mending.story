# A count that was mended and is said again is asked about, however its words are parted

That a count is on record is told where "never mind" is said of it.

## said
visit 2026-10-27
today hinds
12 heifers, all good
no, 11
## the battery dies
## said
12 heifers all good
never mind
11 heifers never mind

## answered
told: today's feet: LH RH
saved 12 heifers
told 12 heifers: LH RH lifted, 12 with nothing found
saved 11 heifers
told 11 heifers: LH RH lifted, 11 with nothing found
refused line 1: 11 heifers were counted at this visit already. Others, once more so many: say the line again now. The same: "never mind".
mark 12 heifers: "12 heifers all good" is dropped
mark 11 heifers: that count is on record, and no line of it waits; "no, 11 heifers" mends the count told last, and evenclaw redact, with the id it was saved under, takes one away

## counted
11 heifers: both hind feet lifted, nothing found on 11

## ended
