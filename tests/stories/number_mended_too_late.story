# "412 no, 421" of a cow that was let out is refused and asked about, never an empty turn of 421

Her turn would leave one cow for another. What to do instead depends on who is known: a new 412 is
given her right number by a command; right after she was let out "no, 421" does it. With no 430 at
this visit "430 no, 431" is one call of 431.

## given
visit 2026-10-13
today hinds
414 nothing found
done

## said
visit 2026-10-27
today hinds
412 LH outside sole ulcer middle, bad
rest fine
413 nothing found
414 nothing found
419 nothing found
412 no, 421
414 no, 424
430 no, 431; nothing found
done
415 nothing found
done
415 no, 416
no, 416

## answered
told: today's feet: LH RH
saved 412
saved 413
saved 414
refused line 7: 412 was in the crush at this visit and is let out, so her number is not mended by word of mouth. If no other cow is 412: evenclaw cow number 412 421; if 421 is in the crush now, say 421 alone.
refused line 8: 414 was in the crush at this visit and is let out, so her number is not mended by word of mouth. Call 424 with what was found of her, and take that back from 414; if 424 is in the crush now, say 424 alone.
saved 419
mark 431: put right: all that was called of 430 is hers
saved 431
saved 415
refused line 13: 415 was in the crush at this visit and is let out, so her number is not mended by word of mouth. Say "no, 416", without her number.
saved 416

## recorded
412 | LH outside SU sole_middle bad | fine RH
413 | fine LH RH
414 | fine LH RH
419 | fine LH RH
431 | fine LH RH
416 | fine LH RH

## ended
news_unclear 412: "412 no, 421": 412 was in the crush at this visit and is let out, so her number is not mended by word of mouth. What holds?
news_unclear 414: "414 no, 424": 414 was in the crush at this visit and is let out, so her number is not mended by word of mouth. What holds?
