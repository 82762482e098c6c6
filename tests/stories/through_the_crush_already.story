# Who was called today already is not the one who stands there now under a number near hers

## given
visit 2026-09-29
today hinds
101 LH outside sole ulcer heel, bad; block on inside
rest fine
201 LH outside sole ulcer heel, bad; block on inside
rest fine
done

## said
visit 2026-10-27
today hinds
101 LH outside sole ulcer heel, slight; block off
rest fine
131 recheck; nothing found
231 recheck; nothing found
done

## answered
told: today's feet: LH RH
saved 101
saved 131
ask 231: 231 is new here; 201 has a block on left hind. 201 meant? (answer: no, 201 / go ahead)
ask 231: 231 is new here; 201 has a block on left hind. 201 meant? (answer: no, 201 / go ahead)
