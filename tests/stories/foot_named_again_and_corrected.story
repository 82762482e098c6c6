# "LH no, RH" moves all that had been called of LH, in the crush as well

Where something is called right behind it the name was the slip, and on two lines it could be
either: then it is asked. All that was done moves with what was found.

## said
visit 2026-10-27
today all four
410 LH SU outside; block in; RF fine
LH no, RH
411 LH SU outside; block in; RF fine
411 LH no, RH; spray
412 LH SU outside; RF fine
LH no, RH DD raw
413 LH SU outside; RF fine
LH
no, RH
LH no, RH
414 LH SU outside; RF fine
LH
no, RH
never mind
RH DD raw
done

## answered
told: today's feet: LF RF LH RH
mark 410: place, degree not called (left hind sole ulcer)
mark 410: place, degree not called (right hind sole ulcer)
saved 410
mark 411: place, degree not called (left hind sole ulcer)
mark 411: place, degree not called (right hind sole ulcer)
saved 411
mark 412: place, degree not called (left hind sole ulcer)
mark 412: place not called (right hind digital dermatitis)
saved 412
mark 413: place, degree not called (left hind sole ulcer)
refused line 10: it is unclear whether all that was called of LH is of RH, or LH was a slip just now; all of it: "LH no, RH" in one line; a slip: "never mind", then RH
mark 413: place, degree not called (right hind sole ulcer)
saved 413
mark 414: place, degree not called (left hind sole ulcer)
refused line 14: it is unclear whether all that was called of LH is of RH, or LH was a slip just now; all of it: "LH no, RH" in one line; a slip: "never mind", then RH
mark 414: "no, RH" is dropped
mark 414: place not called (right hind digital dermatitis)
saved 414

## recorded
410 | RH outside SU; block_on inside | fine RF
411 | RH outside SU; block_on inside; spray | fine RF
412 | LH outside SU | RH DD raw | fine RF
413 | RH outside SU | fine RF
414 | LH outside SU | RH DD raw | fine RF
