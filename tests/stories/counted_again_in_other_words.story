# A count of the same place is asked about, whatever was done to them and however many they were

Without a place it is asked about in the same words, when somebody is there to answer.

## said
visit 2026-10-27
today hinds
12 heifers, yard, nothing found
12 heifers, yard, all trimmed
no, 12 heifers, yard, all trimmed
never mind
11 heifers, Yard, nothing found
never mind
9 cows, yard, nothing found
8 calves nothing found
203 nothing found
8 calves nothing found
never mind
7 calves nothing found
done

## answered
told: today's feet: LH RH
saved 12 heifers
told 12 heifers: yard, LH RH lifted, 12 with nothing found
refused line 3: 12 heifers, yard, were counted at this visit already. Others, once more so many: say the line again now. The same: "never mind"; the same, as it is said now: "no, 12 heifers, yard, all trimmed".
saved 12 heifers
told 12 heifers: yard, LH RH lifted, 12 with nothing found, 12 trimmed
mark: there is no line to drop; say her number first
refused line 6: 12 heifers, yard, were counted at this visit already. Others, once more so many: say the line again now. The same: "never mind"; the same, as it is said now: "no, 11 heifers, Yard, nothing found".
mark 11 heifers: "11 heifers, Yard, nothing found" is dropped
saved 9 cows
told 9 cows: yard, LH RH lifted, 9 with nothing found
saved 8 youngstock
told 8 youngstock: LH RH lifted, 8 with nothing found
saved 203
refused line 11: 8 youngstock were counted at this visit already. Others, once more so many: say the line again now. The same: "never mind".
mark 8 calves: "8 calves nothing found" is dropped
saved 7 youngstock
told 7 youngstock: LH RH lifted, 7 with nothing found
mark: no cow is in the crush

## counted
12 heifers, yard: both hind feet lifted, nothing found on 12 and 12 trimmed
9 cows, yard: both hind feet lifted, nothing found on 9
8 youngstock: both hind feet lifted, nothing found on 8
7 youngstock: both hind feet lifted, nothing found on 7

## ended
