# Taken up again while the visit is open, a turn of before is still mended by number

## said
visit 2026-10-27
caller Anna
today hinds
412 LH outside white line abscess heel, bad; block on inside
rest fine
413 RH DD raw behind

## the battery dies

## said
412 no, no white line
412 LH outside sole ulcer middle, plain
rest fine
done

## answered
told: caller Anna
told: today's feet: LH RH
saved 412
mark 413: still in the crush: 413 RH DD raw behind
saved 412
told 412: now reads: 412 rest fine / LH block on inside / RH nothing found
saved 413
saved 412

## recorded
413 | RH DD behind raw
412 | LH outside SU sole_middle plain; block_on inside | fine RH

## ended
lifted_not_called 413: Left hind: not lifted, or what was found?
