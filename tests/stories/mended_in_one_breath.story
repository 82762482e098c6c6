# Two corrections in one breath mend both, and nothing is there twice

The claws were mixed up. Where it cannot be known what two new words take the place of, it is asked.

## said
visit 2026-10-27
today hinds
320 LH inside bruise, slight; outside SU middle; block on inside
no, outside bruise, inside SU
no wait, no block on inside; block on outside
rest fine
done
321 LH outside SU middle, bad; inside DS; inside bruise, slight; RH nothing found
LH no, inside SU, outside WLA
never mind
LH no, no double sole; no, no sole ulcer; outside WLA heel, bad
done
322 LH DD raw behind; wrap on
scrap the wrap
actually RH
rest fine
done

## answered
told: today's feet: LH RH
mark 320: place not called (left hind sole haemorrhage)
mark 320: degree not called (left hind sole ulcer)
stop 320: Block on the claw with the sole ulcer (left hind inside). Outside meant? (answer: LH no, outside / go ahead)
saved 320
mark 321: degree not called (left hind double sole)
mark 321: place not called (left hind sole haemorrhage)
refused line 8: of what was called on LH it is not clear what these take the place of; take back what was wrong, such as "LH no, no double sole", and say what was found
mark 321: "LH no, inside SU, outside WLA" is dropped
saved 321
saved 322

## recorded
320 | LH outside SH slight; inside SU sole_middle; block_on outside | fine RH
321 | LH inside SH slight; outside WLA white_line_heel bad | fine RH
322 | RH DD behind raw | fine LH

## ended
place_not_called 320: Left hind, sole haemorrhage: where?
place_not_called 321: Left hind, sole haemorrhage: where?
degree_not_called 320: Left hind, sole ulcer: how bad?
