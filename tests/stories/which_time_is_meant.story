# "No, 5d" of a cow who is out, of whom several times were called: which is meant is asked

Right behind what was said it is the last one.

## said
visit 2026-10-27
today hinds
410 LH DD raw behind; wrap on, off 3d; see again 14d; rest fine
420 LH DD raw behind; wrap on, off 3d; RH SU heel outside, bad; block inside, off 4 weeks
430 LH DD raw behind; wrap on, off 3d; rest fine
411 rest fine
410 no, 5d
410 LH no, see again 10d
420 no, 5d
420 no, block off 5 weeks
430 no, 5d
done

## answered
told: today's feet: LH RH
saved 410
saved 420
saved 430
refused line 6: Of 410 that could mean wrap on, left hind or see again, left hind. Say which: 410 LH no, wrap on off 5d.
saved 410
told 410: now reads: 410 rest fine / LH DD raw behind; wrap on, off 3d; see again 10d / RH nothing found
refused line 8: Of 420 that could mean wrap on, left hind or block on inside, right hind. Say which: 420 LH no, wrap on off 5d.
saved 420
told 420: now reads: 420 / LH DD raw behind; wrap on, off 3d / RH outside sole ulcer heel, bad; block on inside, off 35d
saved 430
told 430: now reads: 430 rest fine / LH DD raw behind; wrap on, off 5d / RH nothing found
saved 411

## recorded
410 | LH DD behind raw; wrap_on for 2026-10-30; see_again for 2026-11-06 | fine RH
420 | LH DD behind raw; wrap_on for 2026-10-30 | RH outside SU heel bad; block_on inside for 2026-12-01
430 | LH DD behind raw; wrap_on for 2026-11-01 | fine RH
411 | fine LH RH

## ended
news_unclear 410: "410 no, 5d": Of 410 that could mean wrap on, left hind or see again, left hind. What holds?
news_unclear 420: "420 no, 5d": Of 420 that could mean wrap on, left hind or block on inside, right hind. What holds?
