# A wrap or block that was put on and is lost again the same day is asked about

Also where an older one was taken off for it: that one is off already, and the new one is meant.
Where the older one was not told off it may be either.

## given
visit 2026-10-20
today hinds
513 LH DD raw; wrap on, off 3d; rest fine
514 LH outside SU; block on inside; rest fine
515 LH DD raw; wrap on, off 3d; rest fine
done

## said
visit 2026-10-27
today hinds
513 LH wrap off; DD chronic; wrap on, off 3d; rest fine
514 LH block off; outside SU; block on inside; rest fine
515 LH wrap on, off 3d; DD raw; rest fine
411 rest fine
513 LH wrap came off
LH no, no wrap on
514 LH block came off
go ahead
515 LH wrap came off
go ahead
done

## answered
told: today's feet: LH RH
mark 513: place not called (left hind digital dermatitis)
saved 513
mark 514: place, degree not called (left hind sole ulcer)
saved 514
mark 515: place not called (left hind digital dermatitis)
saved 515
saved 411
mark 513: place not called (left hind digital dermatitis)
ask 513: Left hind: wrap put on and off. Which holds? (answer: LH no, no wrap came off by itself / LH no, no wrap on / go ahead)
saved 513
told 513: now reads: 513 rest fine / LH DD chronic; wrap taken off / RH nothing found
saved 513
mark 514: place, degree not called (left hind sole ulcer)
ask 514: Left hind inside: block put on and off. Which holds? (answer: LH no, no block came off / LH no, no block on inside / go ahead)
saved 514
mark 515: place not called (left hind digital dermatitis)
ask 515: Left hind: wrap put on and off. Which holds? (answer: LH no, no wrap came off by itself / LH no, no wrap on / go ahead)
saved 515

## recorded
411 | fine LH RH
513 | LH DD chronic; wrap_off; wrap_came_off | fine RH
514 | LH outside SU; block_off; block_on inside; block_came_off | fine RH
515 | LH DD raw; wrap_on for 2026-10-30; wrap_came_off | fine RH

## ended
place_not_called 513: Left hind, digital dermatitis: where?
place_not_called 514: Left hind, sole ulcer: where?
place_not_called 515: Left hind, digital dermatitis: where?
degree_not_called 514: Left hind, sole ulcer: how bad?
