# The correction that is offered where a block stands on the sore claw may name the block

## said
visit 2026-10-27
today hinds
412 lame LH
LH inside SU; block inside
no, block outside
rest fine
413 lame LH
LH inside SU, block inside
no, block on outside
rest fine
done

## answered
told: today's feet: LH RH
mark 412: place, degree not called (left hind sole ulcer)
stop 412: Block on the claw with the sole ulcer (left hind inside). Outside meant? (answer: no, outside / go ahead)
mark 412: taken as: no, outside
saved 412
mark 413: place, degree not called (left hind sole ulcer)
stop 413: Block on the claw with the sole ulcer (left hind inside). Outside meant? (answer: no, outside / go ahead)
mark 413: taken as: no, outside
saved 413

## recorded
412 lame LH | LH inside SU; block_on outside | fine RH
413 lame LH | LH inside SU; block_on outside | fine RH
