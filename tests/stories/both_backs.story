# "Both backs" are the hinds, and so are the "backs only" of a count

## said
visit 2026-10-27
today all four
140 both backs slurry heel slight, rest fine
done
12 dry cows, bottom field, backs only, all trimmed
done

## answered
told: today's feet: LF RF LH RH
saved 140
saved 12 dry cows
told 12 dry cows: bottom field, LH RH lifted, 12 trimmed
mark: no cow is in the crush

## recorded
140 | LH HHE slight | RH HHE slight | fine LF RF

## counted
12 dry cows, bottom field: both hind feet lifted, 12 trimmed

## ended
