# Two cows without a number are two cows

The same words may be two animals, so they are never made one by the program alone.

## said
visit 2026-10-27
today all four
no number, red heifer
nothing found
done
no number, red heifer
LH DD raw behind
rest fine
done

## answered
told: today's feet: LF RF LH RH
saved red heifer
saved red heifer

## turns
no number: 2

## ended
unnumbered red heifer: Which number has she: red heifer? (left hind digital dermatitis)
unnumbered red heifer: Which number has she: red heifer? (nothing found on her)
