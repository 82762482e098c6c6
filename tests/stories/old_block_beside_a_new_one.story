# A block on the other claw tells nothing of the old one

Both blocked is a Stop, which asks of the old one. Where nobody knew last time whether it was still
on, it is asked once more.

## given
visit 2026-09-29
today hinds
301 LH outside SU heel bad; block on inside; rest fine
302 LH outside SU heel bad; block on inside; rest fine
done
visit 2026-10-13
today hinds
301 LH block don't know; outside SU heel plain; rest fine
done

## said
visit 2026-10-27
today hinds
301 LH inside SU heel plain; block on outside; rest fine
302 LH inside SU heel plain; block on outside; rest fine
done

## answered
told: today's feet: LH RH
ask 301: The sole ulcer of 13 Oct was outside, left hind. Outside meant? (answer: go ahead)
ask 301: Block on left hind inside since 29 Sep (28 d): still on? (answer: LH block still on inside / LH block came off inside / LH block taken off inside / LH block don't know inside)
saved 301
stop 302: Left hind: both claws blocked (inside since 29 Sep). A block rests one claw. (answer: LH block taken off inside / LH block came off inside / go ahead)
stop 302: Left hind: both claws blocked (inside since 29 Sep). A block rests one claw. (answer: LH block taken off inside / LH block came off inside / go ahead)

## ended
unanswered 302: Left hind: both claws blocked (inside since 29 Sep). A block rests one claw.
unanswered 301: The sole ulcer of 13 Oct was outside, left hind. Outside meant?
unanswered 301: Block on left hind inside since 29 Sep (28 d): still on?
