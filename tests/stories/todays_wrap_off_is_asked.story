# A wrap or block put on at this visit is never told off without asking

"304 LH wrap off" may be of the one she came with, told late. Only the one put on at this visit is
there: it is asked, and said once more it holds. With an old block on the other claw the old one is
meant.

## given
visit 2026-10-20
today hinds
301 LH DD raw behind; wrap on; rest fine
302 LH outside SU heel bad; block on inside; rest fine
303 LH DD raw behind; wrap on; rest fine
done

## said
visit 2026-10-27
today hinds
301 LH wrap off; DD raw behind; wrap on; rest fine
302 LH inside SU heel plain; block on outside; rest fine
go ahead
303 LH wrap still on, off Thu; DD raw behind; rest fine
304 LH DD raw behind; wrap on; rest fine
305 LH outside SU heel plain; block on inside; RH outside SU heel plain; block on inside
306 LH DD raw behind; wrap on; rest fine
307 LH DD raw behind; wrap on; rest fine
308 LH DD raw behind; wrap on; rest fine
done
304 LH wrap off
311 rest fine
304 LH wrap off
news 301 LH wrap off
news 302 LH block gone
303 wrap off
news 305 blocks off
news 305 LH block came off
news 305 LH block came off
306 no, 2d
306 LH wrap off
312 rest fine
307 wrap off
307 LH wrap came off
308 hinds wraps off
313 rest fine
done

## answered
told: today's feet: LH RH
saved 301
stop 302: Left hind: both claws blocked (inside since 20 Oct). A block rests one claw. (answer: LH block taken off inside / LH block came off inside / go ahead)
saved 302
saved 303
saved 304
saved 305
saved 306
saved 307
saved 308
question 304: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
mark 304: taken as news of her; if she was in the crush, say her number and what was found
told 304: closed: wrap off left hind
question 301: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
told 302: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
question 303: Her wrap on left hind was said to be still on in the crush. Is it off, or still on? Say this again if it is off.
question 305: Her blocks on both hinds were put on at this visit. Are those off? Then say the foot.
told 305: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
told 305: noted; nothing of hers was waiting for it
refused line 21: That mends nothing that was called of 306. On record: 306 rest fine / LH DD raw behind; wrap on / RH nothing found.
saved 311
question 306: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
mark 306: taken as news of her; if she was in the crush, say her number and what was found
question 307: Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.
told 307: closed: wrap off left hind
saved 312
question 308: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
mark 308: taken as news of her; if she was in the crush, say her number and what was found
saved 313

## due 2026-10-28
due 303: wrap off left hind (farmer, by 2026-10-29)
coming 301: wrap off left hind (farmer, by 2026-11-01)
coming 306: wrap off left hind (farmer, by 2026-11-01)
coming 308: wrap off left hind (farmer, by 2026-11-01)
coming 302: block still on? left hind, outside claw (farmer, by 2026-11-04)
coming 305: block still on? right hind, inside claw (farmer, by 2026-11-04)
coming 301: look at the sore on left hind (farmer, by 2026-11-06)
coming 303: look at the sore on left hind (farmer, by 2026-11-06)
coming 304: look at the sore on left hind (farmer, by 2026-11-06)
coming 306: look at the sore on left hind (farmer, by 2026-11-06)
coming 307: look at the sore on left hind (farmer, by 2026-11-06)
coming 308: look at the sore on left hind (farmer, by 2026-11-06)
coming 302: block check left hind, outside claw (trimmer, by 2026-11-24)
coming 305: block check right hind, inside claw (trimmer, by 2026-11-24)
coming 302: block off left hind, outside claw (trimmer, by 2026-12-01)
coming 305: block off right hind, inside claw (trimmer, by 2026-12-01)

## ended
news_unclear 301: "news 301 LH wrap off": Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
news_unclear 303: "303 wrap off": Her wrap on left hind was said to be still on in the crush. Is it off, or still on? Say this again if it is off.
news_unclear 306: "306 no, 2d": That mends nothing that was called of 306. What holds?
news_unclear 306: "306 LH wrap off": Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
news_unclear 308: "308 hinds wraps off": Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
