# A block that was put on in this turn is not refitted in it

"Refitted" tells of a block of last time. Taken back, it takes the block of today with it no more.

## said
visit 2026-10-27
today hinds
112 LH outside SU heel, bad; block inside
refitted
no, no refitted
rest fine
113 LH outside SU heel, bad; block on inside, refitted
LH outside SU heel, bad; block on inside
rest fine
114 LH outside SU heel, bad; refitted inside
no, no refitted
block inside
rest fine
115 LH outside SU heel, bad; block inside
refitted
LH no, no block on inside; refitted inside
rest fine
done

## answered
told: today's feet: LH RH
refused line 3: a block was called on LH at this visit already: "block on inside"; it is put on today or refitted; if the other was wrong: "LH no, no block on inside; block refitted"
mark 112: "refitted" is dropped
refused line 6: a block was called on LH at this visit already: "block on inside"; it is put on today or refitted; if the other was wrong: "LH no, no block on inside; block refitted"
saved 112
saved 113
saved 114
refused line 14: a block was called on LH at this visit already: "block on inside"; it is put on today or refitted; if the other was wrong: "LH no, no block on inside; block refitted"
saved 115

## recorded
112 | LH outside SU heel bad; block_on inside | fine RH
113 | LH outside SU heel bad; block_on inside | fine RH
114 | LH outside SU heel bad; block_on inside | fine RH
115 | LH outside SU heel bad; block_refitted inside | fine RH
