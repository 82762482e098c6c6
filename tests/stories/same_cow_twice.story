# The same cow twice: other feet join, the same foot is asked about

## said
visit 2026-10-27
today all four
412 routine
LH outside bruise middle, slight
rest fine
413 nothing found
412 RH outside bruise middle, slight
done

## answered

## turns

## ended
