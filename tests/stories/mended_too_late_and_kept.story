# A correction that comes too late is asked about, and said again at once it holds

Whose it is nobody knows when something else was said since. It is on record, no cow is made of it, and she who was
let out last is named.

## said
visit 2026-10-27
today hinds
410 LH DD raw
rest fine
done
caller Ben
no, 401

## answered
told: today's feet: LH RH
mark 410: place not called (left hind digital dermatitis)
saved 410
told: caller Ben
refused line 6: Something else was said since 410 was let out, so it is not clear what was wrong. Of 410: say it again now. Else the number and what holds.

## said
no, 401
caller Ben
no, RH
420 LH DD raw
rest fine
done
caller Ben
no, bad
420 no, bad
430 nothing found
done
caller Ben
no, in

## answered
saved 401
told: caller Ben
refused line 9: Something else was said since 401 was let out, so it is not clear what was wrong. Of 401: say it again now. Else the number and what holds.
mark 420: place not called (left hind digital dermatitis)
saved 420
told: caller Ben
refused line 14: Something else was said since 420 was let out, so it is not clear what was wrong. Of 420: say it again now. Else the number and what holds.
saved 420
told 420: now reads: 420 rest fine / LH DD raw, bad / RH nothing found
saved 430
told: caller Ben
refused line 19: Something else was said since 430 was let out, so it is not clear what was wrong. Of 430: say it again now. Else the number and what holds.

## recorded
401 | LH DD raw | fine RH
420 | LH DD bad raw | fine RH
430 | fine LH RH

## ended
place_not_called 401: Left hind, digital dermatitis: where?
place_not_called 420: Left hind, digital dermatitis: where?
news_unclear 401: "no, RH": Something else was said since 401 was let out, so it is not clear what was wrong. What holds?
news_unclear 430: "no, in": Something else was said since 430 was let out, so it is not clear what was wrong. What holds?
