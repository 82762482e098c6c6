# A Stop that "done" told of again is not told a third time as the next cow comes

She stays in the crush at "done" because of it. Who then calls the next cow has read it twice.

## said
visit 2026-10-27
today all four
412 LH SU bad outside heel; block outside; rest fine
done
413 nothing found
done

## answered
told: today's feet: LF RF LH RH
stop 412: Block on the claw with the sole ulcer (left hind outside). Inside meant? (answer: no, inside / go ahead)
stop 412: Block on the claw with the sole ulcer (left hind outside). Inside meant? (answer: no, inside / go ahead)
saved 412
saved 413
