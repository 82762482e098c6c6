# A wrap that is to come off in a month, or a block in two days, is asked about at once

The answer that is offered puts the usual day in its place; "go ahead" keeps what was said.

## said
visit 2026-10-27
today hinds
412 LH DD raw behind; spray; wrap on, off 30d
LH no, no wrap on; wrap on, off 5d
rest fine
done
413 LH outside bruise middle; block on inside, off 2d
go ahead
rest fine
done

## answered
told: today's feet: LH RH
ask 412: Left hind: wrap off in 30 days? A wrap comes off after 3 to 7. (answer: LH no, no wrap on; wrap on, off 5d / go ahead)
saved 412
mark 413: degree not called (left hind sole haemorrhage)
ask 413: Left hind inside: block off in 2 days? A block needs about 4 weeks. (answer: LH no, no block on inside; block on inside, off 28d / go ahead)
saved 413

## due 2026-10-28
due 413: block off left hind, inside claw (trimmer, by 2026-10-29)
coming 412: wrap off left hind (farmer, by 2026-11-01)
coming 412: look at the sore on left hind (farmer, by 2026-11-06)
