# A note that holds a finding is announced

Everything behind "note" is the note, up to the end of the line. When a foot stands in it and something
that is called of one, it may have been meant as a call; it stays a note, and that is told while she
stands there.

## said
visit 2026-10-27
today both hinds
412 rest fine; note kicks; LH SU outside heel bad
413 rest fine; note kicks
414 rest fine; note block inside; RH fine
done

## answered
told: today's feet: LH RH
mark 412: kept as a note; what was found or done is said before "note" or on a line of its own
saved 412
saved 413
mark 414: kept as a note; what was found or done is said before "note" or on a line of its own
saved 414

## ended
