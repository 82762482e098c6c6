# What follows a refused line that named another foot is of neither until a foot is said

The block is for the left hind, and the right hind was named last in a line that could be read. A
foot alone on the next line is answer enough. "Rest fine" and her handling need no foot.

## said
visit 2026-10-27
today all four
501 RH DD raw
LH outsde SU
block inside
LH outside SU
block on inside
rest fine
502 RH DD raw
LHH SU outside
bad
LH SU outside, bad
kicks; rest fine
503 RH DD raw
SU LH
block inside
LH
LH SU outside
rest fine
504 RH DD raw
RH outsde bruise
wrap on, off 3d
RH outside bruise
rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 501: place not called (right hind digital dermatitis)
refused line 3: "outsde" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
refused line 4: A line before was not understood and may have spoken of LH, so it is not clear of which foot this is. Say the foot first: "LH block inside".
mark 501: place, degree not called (left hind sole ulcer)
saved 501
mark 502: place not called (right hind digital dermatitis)
refused line 9: "LHH" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found; did you mean "LH"?
refused line 10: A line before was not understood and may have spoken of LH, so it is not clear of which foot this is. Say the foot first: "LH bad".
mark 502: place not called (left hind sole ulcer)
saved 502
mark 503: place not called (right hind digital dermatitis)
refused line 14: is "LH" meant for what stands before it? say the foot first: LH SU; or put ; before LH when more is to be said of it
refused line 15: A line before was not understood and may have spoken of LH, so it is not clear of which foot this is. Say the foot first: "LH block inside".
mark 503: taken as: LH block inside
mark 503: place, degree not called (left hind sole ulcer)
saved 503
mark 504: place not called (right hind digital dermatitis)
refused line 20: "outsde" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
mark 504: place, degree not called (right hind sole haemorrhage)
saved 504

## recorded
501 | LH outside SU; block_on inside | RH DD raw | fine LF RF
502 | LH outside SU bad | RH DD raw | fine LF RF | cow: kicks
503 | LH outside SU; block_on inside | RH DD raw | fine LF RF
504 | RH DD raw; outside SH; wrap_on for 2026-10-30 | fine LF RF LH

## ended
place_not_called 501: Right hind, digital dermatitis: where?
place_not_called 501: Left hind, sole ulcer: where?
place_not_called 502: Right hind, digital dermatitis: where?
place_not_called 502: Left hind, sole ulcer: where?
place_not_called 503: Right hind, digital dermatitis: where?
place_not_called 503: Left hind, sole ulcer: where?
place_not_called 504: Right hind, digital dermatitis: where?
place_not_called 504: Right hind, sole haemorrhage: where?
degree_not_called 501: Left hind, sole ulcer: how bad?
degree_not_called 503: Left hind, sole ulcer: how bad?
degree_not_called 504: Right hind, sole haemorrhage: how bad?
