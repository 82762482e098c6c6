# A finding behind "nothing found" without a number is told: it may be the next cow's

## said
visit 2026-10-27
today all four
413 nothing found
LH DD raw behind
nothing after all
414 LH DD raw behind
rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 413: left hind was fine a line before. Not hers? "nothing after all", then the right number
saved 413
saved 414
