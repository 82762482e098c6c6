# A correction that could mean two things, or nothing, is refused with what to say

Unless it is said more plainly it is asked about at the end. A number that was not in the crush may
be the next cow: she stands there, and the line with her.

## said
visit 2026-10-27
today hinds
412 LH DD raw behind; RH DD scab behind
done
413 LH outside bruise slight
414 nothing found
412 no, chronic
412 LH no, chronic
413 no, no DD
421 no, right hind
415 RH DD raw behind
done
415 RH DD chronic behind; LH growth between, plain
done
415 no, scab
415 LH no, slight

## answered
told: today's feet: LH RH
saved 412
mark 413: place not called (left hind sole haemorrhage)
saved 413
refused line 6: Of 412 that could mean LH or RH. Say the foot behind her number: 412 LH no, chronic.
saved 412
told 412: now reads: 412 / LH DD chronic behind / RH DD scab behind
refused line 8: That mends nothing that was called of 413. On record: 413 / LH outside bruise, slight.
refused line 9: 421 was not in the crush at this visit, so nothing of hers is there to mend. Say the number that is meant; or call her: 421, the foot and what was found.
saved 414
mark 421: "421 no, right hind" was not understood, nor said again
saved 421
saved 415
saved 415
refused line 14: 415 was called twice at this visit, and it is not clear which call is meant. Both are kept; say which holds when the visit is ended.
saved 415
told 415: now reads: 415 / RH DD chronic behind / LH growth between, slight

## recorded
413 | LH outside SH slight
412 | LH DD behind chronic | RH DD behind scab
414 | fine LH RH
421 | RH not called | unfinished: "421 no, right hind" was not understood
415 | RH DD behind raw
415 | LH IH between slight | RH DD behind chronic

## ended
unfinished 421: Her turn was not finished: "421 no, right hind" was not understood
called_twice 415: Right hind was called twice in this visit. Do both calls hold?
lifted_not_called 413: Right hind: not lifted, or what was found?
lifted_not_called 421: Right hind: what was found?
place_not_called 413: Left hind, sole haemorrhage: where?
news_unclear 413: "413 no, no DD": That mends nothing that was called of 413. What holds?
news_unclear 415: "415 no, scab": 415 was called twice at this visit, and it is not clear which call is meant. What holds?
