# A file given again does not mend the other foot by a correction that fitted two feet at first

## from a file
visit 2026-10-27
today hinds
412 LH DD raw behind; RH DD raw behind
413 nothing found
412 no, chronic
412 LH no, chronic
414 nothing found
done

## recorded
412 | LH DD behind chronic | RH DD behind raw
413 | fine LH RH
414 | fine LH RH

## the same file again

## recorded
412 | LH DD behind chronic | RH DD behind raw
413 | fine LH RH
414 | fine LH RH

## ended
