# Twelve heifers, all good bar the little black one

Those nobody calls one by one are counted for the bill and are no cows on record. She who was not
like the others stands in the crush and is a cow of her own.

## said
visit 2026-10-27
today all four
412 nothing found
twelve heifers far yard, all good bar the little black one
LH outside sole ulcer middle, bad; block on inside
rest fine
8 cows from the dry pen, all trimmed, just the backs
413 nothing found
done

## answered
told: today's feet: LF RF LH RH
saved 412
saved 12 heifers
told 12 heifers: far yard, LF RF LH RH lifted, 11 with nothing found, little black one on her own
mark little black one: call what was found on her; her number is asked for when the visit closes
saved little black one
saved 8 cows
told 8 cows: from the dry pen, LH RH lifted, 8 trimmed
saved 413

## counted
12 heifers, far yard: all four feet lifted, nothing found on 11; called on her own: little black one
8 cows, from the dry pen: both hind feet lifted, 8 trimmed

## recorded
412 | fine LF RF LH RH
little black one | LH outside SU sole_middle bad; block_on inside | fine LF RF RH
413 | fine LF RF LH RH

## ended
unnumbered little black one: Which number has she: little black one?
