# "No, no block" of a cow that is called again takes back the block of the first call as well

She who came back only for that leaves no turn of nothing behind. Where it fits two feet it is asked.

## from a file
visit 2026-10-27
today hinds
412 LH outside sole ulcer middle, bad; block on inside
rest fine
413 nothing found
412
no, no block
done
414 LH outside sole ulcer; block on inside
rest fine
415 nothing found
414 LH sole ulcer middle, bad; block on
no, no block
416 nothing found
417 both hinds outside sole ulcer middle, bad; block on inside; to straw
418 nothing found
417
no, no block
LH no, no block
420 nothing found
done

## answered
told: today's feet: LH RH
saved 412
saved 413
saved 412
told 412: now reads: 412 rest fine / LH outside sole ulcer middle of the sole, bad / RH nothing found
mark 414: place, degree not called (left hind sole ulcer)
saved 414
saved 415
saved 414
told 414: now reads: 414 rest fine / LH outside sole ulcer / RH nothing found
saved 414
saved 416
saved 417
saved 418
refused line 17: Of 417 that could mean LH or RH. Say the foot first: LH no, no block.
saved 417
told 417: now reads: 417 to straw / LH outside sole ulcer middle of the sole, bad / RH outside sole ulcer middle of the sole, bad; block on inside
saved 420

## recorded
413 | fine LH RH
412 | LH outside SU sole_middle bad | fine RH
415 | fine LH RH
414 | LH outside SU sole_middle bad | fine RH
416 | fine LH RH
418 | fine LH RH
417 | LH outside SU sole_middle bad | RH outside SU sole_middle bad; block_on inside | cow: to_straw
420 | fine LH RH

## ended

## due 2026-10-27
coming 412: look at left hind, ring if no better (farmer, by 2026-11-04)
coming 414: look at left hind, ring if no better (farmer, by 2026-11-04)
coming 417: block still on? right hind, inside claw (farmer, by 2026-11-04)
coming 417: look at left hind, ring if no better (farmer, by 2026-11-04)
coming 412: see again left hind (trimmer, by 2026-11-24)
coming 414: see again left hind (trimmer, by 2026-11-24)
coming 417: block check right hind, inside claw (trimmer, by 2026-11-24)
coming 417: see again left hind (trimmer, by 2026-11-24)
coming 417: block off right hind, inside claw (trimmer, by 2026-12-01)

## the same file again

## recorded
413 | fine LH RH
412 | LH outside SU sole_middle bad | fine RH
415 | fine LH RH
414 | LH outside SU sole_middle bad | fine RH
416 | fine LH RH
418 | fine LH RH
417 | LH outside SU sole_middle bad | RH outside SU sole_middle bad; block_on inside | cow: to_straw
420 | fine LH RH
