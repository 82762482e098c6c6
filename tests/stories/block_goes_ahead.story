# A stop is asked again when she is let out, and "go ahead" is kept with the record

"done" with a stop nobody answered keeps her in the crush once more.

## said
visit 2026-10-27
today all four
161 lame LH
LH outside sole ulcer middle, bad; block on outside
rest fine
done
go ahead
done

## answered
told: today's feet: LF RF LH RH
stop 161: Block on the claw with the sole ulcer (left hind outside). Inside meant? (answer: no, inside / go ahead)
stop 161: Block on the claw with the sole ulcer (left hind outside). Inside meant? (answer: no, inside / go ahead)
saved 161

## ended
