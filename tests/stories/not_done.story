# A cow that was not done is listed with the reason

## said
visit 2026-10-27
today all four
298 not done, lay down in the crush
299 LH outside sole ulcer
done

## answered

## ended
