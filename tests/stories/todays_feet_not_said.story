# "Rest fine" before anybody said which feet are lifted is asked about

## said
visit 2026-10-27
412 routine; nothing found
today hinds
413 routine; nothing found
done

## answered

## cow 412

## cow 413
