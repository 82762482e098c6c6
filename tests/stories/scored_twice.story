# Another mobility score at a second call is refused, as it is at the first

Which of the two holds is said by her: the correction settles it, and there is one task and not two.

## said
visit 2026-10-27
today hinds
412 lame LH 2 of 3; LH SU outside, middle, bad; block on inside; rest fine
411 rest fine
412 mobility 3 of 3
no, mobility 3 of 3
411 mobility 2 of 3
413 rest fine
412 mobility 3 of 3
done

## answered
told: today's feet: LH RH
saved 412
refused line 4: Her mobility was called 2 of 3 before at this visit. If that was wrong, say "no, mobility 3 of 3".
saved 411
ask 412: Walks 3 of 3: straw, or near the parlour, and a look within a week? (answer: go ahead)
saved 412
told 412: now reads: 412 lame LH; mobility 3 of 3; rest fine / LH outside sole ulcer middle of the sole, bad; block on inside / RH nothing found
saved 411
saved 413
ask 412: Walks 3 of 3: straw, or near the parlour, and a look within a week? (answer: go ahead)

## recorded
411 | fine LH RH
412 lame LH | LH outside SU sole_middle bad; block_on inside | fine RH
411
413 | fine LH RH

## due 2026-10-27
coming 412: block still on? left hind, inside claw (farmer, by 2026-11-04)
coming 411: watch her walk, ring if still lame (farmer, by 2026-11-10)
coming 412: block check left hind, inside claw (trimmer, by 2026-11-24)
coming 412: block off left hind, inside claw (trimmer, by 2026-12-01)

## ended
unanswered 412: Walks 3 of 3: straw, or near the parlour, and a look within a week?
