# A count is mended of the animals that are named, not of those counted last

## said
visit 2026-10-27
today hinds
8 heifers, barn, all good
5 cows, dry pen, all trimmed
no, 9 heifers
no, 6 cows
no, 7 dry cows
done

## answered
told: today's feet: LH RH
saved 8 heifers
told 8 heifers: barn, LH RH lifted, 8 with nothing found
saved 5 cows
told 5 cows: dry pen, LH RH lifted, 5 trimmed
saved 9 heifers
told 9 heifers: barn, LH RH lifted, 9 with nothing found
saved 6 cows
told 6 cows: dry pen, LH RH lifted, 6 trimmed
saved 7 dry cows
told 7 dry cows: dry pen, LH RH lifted, 7 trimmed
mark: no cow is in the crush

## counted
9 heifers, barn: both hind feet lifted, nothing found on 9
7 dry cows, dry pen: both hind feet lifted, 7 trimmed
