# A block on the bad claw is mended after another foot was spoken of

The stop comes when "RH fine" is said already. Its answer names the foot, so that "no, inside" finds
the block, while she stands there and later. A second block is no mending: then both claws are
blocked, and that is a stop of its own.

## said
visit 2026-10-27
today hinds
205 LH SU outside heel bad, block outside; RH fine
LH no, inside
done
206 LH SU outside heel bad, block outside; RH fine
go ahead
done
300 nothing found
done
206 no, inside
207 LH SU outside heel bad; block inside; RH fine
LH block outside
LH no, no block on outside
done

## answered
told: today's feet: LH RH
stop 205: Block on the claw with the sole ulcer (left hind outside). Inside meant? (answer: LH no, inside / go ahead)
saved 205
stop 206: Block on the claw with the sole ulcer (left hind outside). Inside meant? (answer: LH no, inside / go ahead)
saved 206
saved 300
saved 206
told 206: now reads: 206 / RH nothing found / LH outside sole ulcer heel, bad; block on inside
stop 207: Block on the claw with the sole ulcer (left hind outside). Inside meant? (answer: LH no, inside / go ahead)
stop 207: Left hind: a block on both claws. A block rests one claw only. (answer: LH no, no block on outside / go ahead)
saved 207

## recorded
205 | LH outside SU heel bad; block_on inside | fine RH
300 | fine LH RH
206 | LH outside SU heel bad; block_on inside | fine RH
207 | LH outside SU heel bad; block_on inside | fine RH
