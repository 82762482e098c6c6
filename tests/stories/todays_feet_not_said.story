# "Rest fine" before anybody said which feet are lifted is asked about

## said
visit 2026-10-27
412 routine; nothing found
today hinds
413 routine; nothing found
done

## answered
question: Which feet are lifted today? Until that is said "rest fine" fills none. (answer: today all four / today both hinds)
told: today's feet: LH RH
saved 412
saved 413

## cow 412
2026-10-27 LH: nothing found
2026-10-27 RH: nothing found

## cow 413
2026-10-27 LH: nothing found
2026-10-27 RH: nothing found
