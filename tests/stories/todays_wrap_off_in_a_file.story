# In a file nobody saw the question, so the same words once more are no answer

Asked without its foot, the foot answers; what is asked after she was called is asked at the end.

## from a file
visit 2026-10-27
today hinds
401 LH DD raw behind; wrap on; rest fine
402 LH DD raw behind; wrap on; rest fine
403 LH DD raw behind; wrap on; rest fine
404 LH DD raw behind; wrap on; rest fine
done
401 LH wrap off
402 wrap off
403 wrap off
403 LH wrap off
401 LH wrap off
404 wrap lost
404 wraps off

## answered
told: today's feet: LH RH
saved 401
saved 402
saved 403
saved 404
question 402: Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.
question 403: Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.
told 403: closed: wrap off left hind
question 404: Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.
question 404: Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.
question 401: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
mark 401: taken as news of her; if she was in the crush, say her number and what was found

## the same file again

## answered
there already 401
there already 402
there already 403
there already 404
question 401: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
question 402: Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.
told 403: noted; nothing of hers was waiting for it
there already 403
question 401: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
question 404: Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.
question 404: Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.

## due 2026-10-28
coming 401: wrap off left hind (farmer, by 2026-11-01)
coming 402: wrap off left hind (farmer, by 2026-11-01)
coming 404: wrap off left hind (farmer, by 2026-11-01)
coming 401: look at the sore on left hind (farmer, by 2026-11-06)
coming 402: look at the sore on left hind (farmer, by 2026-11-06)
coming 403: look at the sore on left hind (farmer, by 2026-11-06)
coming 404: look at the sore on left hind (farmer, by 2026-11-06)

## ended
news_unclear 401: "401 LH wrap off": Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
news_unclear 402: "402 wrap off": Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.
news_unclear 404: "404 wraps off": Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.
