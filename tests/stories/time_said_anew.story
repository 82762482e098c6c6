# The same wrap said again with another time is one wrap, and the later time holds

So it is of a block, of who is seen again and of what she is watched for, at a second call too. Milk
and meat are never held back for less than was said before: a shorter time could be of another medicine.

## said
visit 2026-10-27
today hinds
410 LH DD raw; wrap on, off 3d
wrap on, off 5d
RH SU outside; block inside, off 4 weeks; see again 14d
block 5 weeks
see again 28d
watch her walk 7d
watch her walk 14d
420 LH DD raw; wrap 14d
wrap on, off 5d
rest fine
414 LH DD raw; wrap 5d
430 LH foul; injected with x by the vet; milk withheld 4d; meat 10d
milk withheld 6d
milk withheld 2d
rest fine
414 LH wrap 3d; rest fine
done

## answered
told: today's feet: LH RH
mark 410: place not called (left hind digital dermatitis)
mark 410: wrap on, left hind: by Sun 1 Nov now, not Fri 30 Oct
mark 410: place, degree not called (right hind sole ulcer)
mark 410: block on inside, right hind: by Tue 1 Dec now, not Tue 24 Nov
mark 410: see again, right hind: by Tue 24 Nov now, not Tue 10 Nov
mark 410: watch her walk: by Tue 10 Nov now, not Tue 3 Nov
saved 410
mark 420: place not called (left hind digital dermatitis)
ask 420: Left hind: wrap off in 14 days? A wrap comes off after 3 to 7. (answer: LH no, no wrap on; wrap on, off 5d / go ahead)
mark 420: wrap on, left hind: by Sun 1 Nov now, not Tue 10 Nov
saved 420
mark 414: place not called (left hind digital dermatitis)
saved 414
mark 430: degree not called (left hind foul)
mark 430: milk withheld: by Mon 2 Nov now, not Sat 31 Oct
mark 430: milk withheld: Mon 2 Nov holds, not Thu 29 Oct; to make it shorter say it behind "no,"
saved 430
mark 414: wrap on, left hind: by Fri 30 Oct now, not Sun 1 Nov
mark 414: place not called (left hind digital dermatitis)
saved 414

## recorded
410 | LH DD raw; wrap_on for 2026-11-01 | RH outside SU; block_on inside for 2026-12-01; see_again for 2026-11-24 | cow: watch_her_walk for 2026-11-10
420 | LH DD raw; wrap_on for 2026-11-01 | fine RH
430 | LH IP | fine RH | cow: injected x; milk_withheld for 2026-11-02; meat_withheld for 2026-11-06; milk_withheld for 2026-10-29
414 | LH DD raw; wrap_on for 2026-10-30 | fine RH

## due 2026-10-27
due 430: last milk held back: Mon 2 Nov evening (farmer, by 2026-11-02)
due 430: last day meat held back: Fri 6 Nov (farmer, by 2026-11-06)
coming 414: wrap off left hind (farmer, by 2026-10-30)
coming 430: look at left hind, vet if no better (farmer, by 2026-10-30)
coming 410: wrap off left hind (farmer, by 2026-11-01)
coming 420: wrap off left hind (farmer, by 2026-11-01)
coming 410: block still on? right hind, inside claw (farmer, by 2026-11-04)
coming 410: look at the sore on left hind (farmer, by 2026-11-06)
coming 414: look at the sore on left hind (farmer, by 2026-11-06)
coming 420: look at the sore on left hind (farmer, by 2026-11-06)
coming 410: watch her walk (farmer, by 2026-11-10)
coming 410: block check right hind, inside claw (trimmer, by 2026-11-24)
coming 410: see again right hind (trimmer, by 2026-11-24)
coming 410: block off right hind, inside claw (trimmer, by 2026-12-01)
