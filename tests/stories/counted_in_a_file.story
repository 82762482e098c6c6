# A file given twice counts nobody twice, and counts two yards in the same words as two

## from a file
visit 2026-10-27
today hinds
12 heifers, all good
12 heifers, all good
no, 11
5 cows trimmed bar the lame one
LH sole ulcer outside, middle, bad; block on inside
rest fine
done

## the same file again

## counted
12 heifers: both hind feet lifted, nothing found on 12
11 heifers: both hind feet lifted, nothing found on 11
5 cows: both hind feet lifted, 4 trimmed; called on her own: lame one

## turns
no number: 1
