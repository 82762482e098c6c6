# "No, 315" right behind news is the number of the news, and no visit of another cow moves

Who was let out before the news is mended by her number, or when the same is said once more.

## given
visit 2026-10-20
today hinds
302 LH SU outside heel; block on inside
rest fine
done
315 LH SU outside heel; block on inside
rest fine
done
328 nothing found
done

## said
visit 2026-10-27
today hinds
316 RH bruise outside middle slight
rest fine
done
302 block off
no, 315
329 LH DD raw behind
rest fine
done
328 gone
no, RH
no, chronic
329 LH no, chronic

## answered
told: today's feet: LH RH
saved 316
told 302: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
told 302: taken back: 302 block off
told 315: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
saved 329
told 328: kept as gone
refused line 11: Something else was said since 329 was let out, so it is not clear what was wrong. Of 329: say it again now. Else the number and what holds.
refused line 12: Something else was said since 329 was let out, so it is not clear what was wrong. Of 329: say it again now. Else the number and what holds.
saved 329
told 329: now reads: 329 rest fine / LH DD chronic behind / RH nothing found

## recorded
316 | RH outside SH sole_middle slight | fine LH
329 | LH DD behind chronic | fine RH
