# A number behind animals counted together is a cow of the herd, or a count

It mends the count when no cow carries it and nobody would miscount so far; else it is refused with
both lines to say.

## given
visit 2026-10-20
today hinds
110 rest fine
9 rest fine
done

## said
visit 2026-10-27
today hinds
8 cows trimmed
no, 110
no, 7 cows
8 heifers trimmed
no, 9
never mind
9 LH DD raw behind; rest fine
done
12 bulls trimmed
no, 25
no, 11
done

## answered
told: today's feet: LH RH
saved 8 cows
told 8 cows: LH RH lifted, 8 trimmed
refused line 3: It is unclear whether that is how many they were, or the number of a cow. How many: "no, 110 cows"; a cow: "never mind", then 110 and what was found on her.
saved 7 cows
told 7 cows: LH RH lifted, 7 trimmed
saved 8 heifers
told 8 heifers: LH RH lifted, 8 trimmed
refused line 6: It is unclear whether that is how many they were, or the number of a cow. How many: "no, 9 heifers"; a cow: "never mind", then 9 and what was found on her.
mark 8 heifers: "no, 9" is dropped
saved 9
saved 12 bulls
told 12 bulls: LH RH lifted, 12 trimmed
refused line 11: It is unclear whether that is how many they were, or the number of a cow. How many: "no, 25 bulls"; a cow: "never mind", then 25 and what was found on her.
saved 11 bulls
told 11 bulls: LH RH lifted, 11 trimmed
mark: no cow is in the crush

## counted
7 cows: both hind feet lifted, 7 trimmed
8 heifers: both hind feet lifted, 8 trimmed
11 bulls: both hind feet lifted, 11 trimmed

## ended
news_unclear 12 bulls: "no, 25": It is unclear whether that is how many they were, or the number of a cow. What holds?
