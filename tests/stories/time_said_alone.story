# A number with its unit and nothing else is never lost

Right behind a wrap that waits for the day it comes off it can be of that alone. Anywhere else nobody
knows what it is of, and it stays asked about until it is said with that.

## said
visit 2026-10-27
today all four
501 RH DD raw; wrap
3d
rest fine
502 RH DD raw; wrap; spray
3d
wrap on, off 3d
rest fine
503 RH SU outside
42 mm
rest fine
504 LH DD raw; block on inside
4 weeks
rest fine
505 LH DD raw
8 milkings
milk withheld 8 milkings
rest fine
506 RH DD raw; wrap on
2w
wrap 3d
rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 501: place not called (right hind digital dermatitis)
mark 501: taken as: wrap on, off 3d
saved 501
mark 502: place not called (right hind digital dermatitis)
refused line 6: "3d" tells a time, and not what is to happen then; say such as "see again 3d", or "off 3d" behind a wrap or block that is put on
saved 502
mark 503: place, degree not called (right hind sole ulcer)
refused line 10: "mm" cannot stand here; expected a foot, a claw, a lesion, nothing found, why she came or a degree
mark 503: "42 mm" was not understood, nor said again
saved 503
mark 504: place not called (left hind digital dermatitis)
mark 504: taken as: block on inside, off 4 weeks
saved 504
mark 505: place not called (left hind digital dermatitis)
refused line 16: "milkings" cannot stand here; expected a foot, a claw, a lesion, nothing found, why she came or a degree; say what is to happen then: "see again 28d", or "off 28d" behind a wrap or block
saved 505
mark 506: place not called (right hind digital dermatitis)
mark 506: taken as: wrap on, off 2w
ask 506: Right hind: wrap off in 14 days? A wrap comes off after 3 to 7. (answer: RH no, no wrap on; wrap on, off 5d / go ahead)
mark 506: wrap on, right hind: by Fri 30 Oct now, not Tue 10 Nov
saved 506

## recorded
501 | RH DD raw; wrap_on for 2026-10-30 | fine LF RF LH
502 | RH DD raw; wrap_on for 2026-10-30; spray | fine LF RF LH
503 | RH outside SU | fine LF RF LH | unfinished: "42 mm" was not understood
504 | LH DD raw; block_on inside for 2026-11-24 | fine LF RF RH
505 | LH DD raw | fine LF RF RH | cow: milk_withheld for 2026-10-31
506 | RH DD raw; wrap_on for 2026-10-30 | fine LF RF LH

## ended
unfinished 503: Her turn was not finished: "42 mm" was not understood
place_not_called 501: Right hind, digital dermatitis: where?
place_not_called 502: Right hind, digital dermatitis: where?
place_not_called 503: Right hind, sole ulcer: where?
place_not_called 504: Left hind, digital dermatitis: where?
place_not_called 505: Left hind, digital dermatitis: where?
place_not_called 506: Right hind, digital dermatitis: where?
degree_not_called 503: Right hind, sole ulcer: how bad?
