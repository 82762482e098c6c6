# The answer that is offered mends the block, also when what was found is said behind it

## said
visit 2026-10-27
today hinds
412 LH block on outside; outside white line abscess heel, bad
LH no, inside
rest fine
done

## answered
told: today's feet: LH RH
stop 412: Block on the claw with the white line abscess (left hind outside). Inside meant? (answer: LH no, inside / go ahead)
saved 412

## recorded
412 | LH outside WLA white_line_heel bad; block_on inside | fine RH
