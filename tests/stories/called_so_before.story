# A cow without a number who was called so before is asked about by the number she has now

Her number was learned after the first visit. The same words may be another animal, so she is never
taken for her by the program alone.

## given
visit 2026-10-06
today hinds
no number, white face
RH SU outside heel bad
no, 640
rest fine
done

## said
visit 2026-10-27
today hinds
no number, white face; RH SU outside heel slight
no, 640
rest fine
done
no number, white face; LH SU outside heel slight
rest fine
go ahead
done

## answered
told: today's feet: LH RH
ask white face: 640 was called "white face" before. 640 meant? (answer: no, 640 / go ahead)
mark 640: put right: all that was called of white face is hers
saved 640
ask white face: 640 was called "white face" before. 640 meant? (answer: no, 640 / go ahead)
saved white face

## turns
640: 1
no number: 1

## recorded
640 | RH outside SU heel slight | fine LH
white face | LH outside SU heel slight | fine RH

## ended
unnumbered white face: Which number has she: white face?
