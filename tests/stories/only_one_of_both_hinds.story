# "No, only LH" of both hinds takes off RH what was found and done alike on both

Two cows later as well, with the foot named or without.

## said
visit 2026-10-27
today hinds
410 both hinds DD raw; both wrapped, off 3d
420 both hinds DD raw; both wrapped, off 3d
430 LH DD raw; RH DD raw; both wrapped, off 3d
no, only LH
411 rest fine
410 no, only LH
420 RH no, only RH
done

## answered
told: today's feet: LH RH
mark 410: place not called (both hinds digital dermatitis)
saved 410
mark 420: place not called (both hinds digital dermatitis)
saved 420
mark 430: place not called (both hinds digital dermatitis)
saved 430
saved 410
told 410: now reads: 410 / LH DD raw; wrap on, off 3d
saved 420
told 420: now reads: 420 / RH DD raw; wrap on, off 3d
saved 411

## recorded
430 | LH DD raw; wrap_on for 2026-10-30 | RH DD raw
410 | LH DD raw; wrap_on for 2026-10-30
420 | RH DD raw; wrap_on for 2026-10-30
411 | fine LH RH
