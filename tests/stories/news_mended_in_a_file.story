# A file that mends its own news gives the same when it is given again

## given
visit 2026-09-29
today hinds
306 LH outside sole ulcer heel, bad; block on inside
rest fine
307 RH outside sole ulcer heel, bad; block on inside
rest fine
done

## from a file
visit 2026-10-27
today hinds
306 gone
306 no, 307
412 nothing found
done

## the same file again

## answered
told: today's feet: LH RH
told 306: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
told 306: taken back: 306 gone
told 307: closed: block check right hind, inside claw; block off right hind, inside claw; block still on? right hind, inside claw
saved 412
there already 306
there already 306
there already 412

## due 2026-10-27
overdue 306: block still on? left hind, inside claw (farmer, by 2026-10-07)
due 306: block check left hind, inside claw (trimmer, by 2026-10-27)
due 306: block off left hind, inside claw (trimmer, by 2026-11-03)
