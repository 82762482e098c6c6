# News of the wrong number is put right by both numbers, and who was said to be gone is here

What was told of 306 was of 307: hers is open again, and it is done of the other one.

## given
visit 2026-09-29
today hinds
306 LH outside sole ulcer heel, bad; block on inside
rest fine
307 RH outside sole ulcer heel, bad; block on inside
rest fine
308 LH DD raw behind; wrap on
rest fine
309 RH DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
today hinds
306 gone
306 no, 307
308 wrap off
no, 309
310 wrap off
310 no, 308
306 gone
no, 306 still here
306 still here
308, 309 gone
no, 306
308 not gone
413 LH nothing found
309 gone
no, 307
413 no, 412
RH nothing found
done

## answered
told: today's feet: LH RH
told 306: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
told 306: taken back: 306 gone
told 307: closed: block check right hind, inside claw; block off right hind, inside claw; block still on? right hind, inside claw
told 308: closed: wrap off left hind
told 308: taken back: 308 wrap off
told 309: closed: wrap off right hind
refused line 6: No cow of this herd carries the number 310.
told 308: closed: wrap off left hind
told 306: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
told 306: taken back: 306 gone
refused line 10: Nobody said that 306 is gone. If another one was said to be gone, say her number.
told 308: closed: look at the sore on left hind
told 309: closed: look at the sore on right hind
refused line 12: News was told of several cows, and it is not clear whose number was wrong. Say the wrong number first: "308 no, 306".
told 308: taken back: 308, 309 gone
there already 309
refused line 16: It is unclear whether that is the number of who stands there, or of whom the news is. The news: "309 no, 307"; her number: "413 no, 307".
mark 412: put right: all that was called of 413 is hers
saved 412

## due 2026-10-27
overdue 306: block still on? left hind, inside claw (farmer, by 2026-10-07)
overdue 308: look at the sore on left hind (farmer, by 2026-10-09)
due 306: block check left hind, inside claw (trimmer, by 2026-10-27)
due 306: block off left hind, inside claw (trimmer, by 2026-11-03)

## ended
news_unclear 309: "no, 307": It is unclear whether that is the number of who stands there, or of whom the news is. What holds?
due_not_seen 306: block check left hind, inside claw is due and she was not seen
due_not_seen 306: block off left hind, inside claw is due and she was not seen
