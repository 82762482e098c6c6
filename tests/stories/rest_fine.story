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
told: today's feet: LH RH
saved 412

## cow 412
case: SH LH outside, found 1x
2026-10-27 LH: outside claw: sole haemorrhage, middle of the sole, slight (SH)
2026-10-27 RH: nothing found
