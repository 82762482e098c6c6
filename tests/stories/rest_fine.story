# "Rest fine" fills today's feet and no others

Only the hind feet are lifted today, so nothing is said of the front ones: silence is never
"nothing found".

## said
visit 2026-10-27
today hinds
412 routine
LH outside bruise middle, slight
rest fine
done

## answered

## cow 412
