# A warning nobody answered is answered by calling her again

## given
visit 2026-10-13
today hinds
34 RH DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
today hinds
34 RH DD chronic behind
rest fine
407 LH outside sole ulcer middle, bad; block on outside
rest fine
408 nothing found
done

## ended
unanswered 407: Block on the claw with the sole ulcer (left hind outside). Inside meant?
unanswered 34: Wrap on right hind since 13 Oct (14 d): still on?

## said
34 RH wrap taken off
done
407 go ahead
done

## answered
told: today's feet: LH RH
ask 34: Wrap on right hind since 13 Oct (14 d): still on? (answer: RH wrap still on / RH wrap came off by itself / RH wrap taken off / RH wrap don't know)
saved 34
stop 407: Block on the claw with the sole ulcer (left hind outside). Inside meant? (answer: no, inside / go ahead)
stop 407: Block on the claw with the sole ulcer (left hind outside). Inside meant? (answer: no, inside / go ahead)
saved 407
saved 408
saved 34
saved 407

## ended

## recorded
408 | fine LH RH
34 | RH DD behind chronic; wrap_off | fine LH
407 | LH outside SU sole_middle bad; block_on outside | fine RH
