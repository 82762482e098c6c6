# In a file what follows a line that named another foot goes to no foot

Nobody looks at the screen, so the lines are refused and asked about when the visit closes. What is
said again with its foot is settled.

## from a file
visit 2026-10-27
today all four
501 RH DD raw
wrap LH
off 3d
LH wrap on, off 3d; nothing found
rest fine
502 RH DD raw
nothing LH
spray
LH nothing found; RH spray
rest fine
503 RH DD raw
LH has a SU
block outside
LH SU inside
rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 501: place not called (right hind digital dermatitis)
refused line 3: is "LH" meant for what stands before it? say the foot first: LH wrap; or put ; before LH when more is to be said of it
refused line 4: nothing was said just before that could come off; say what comes off: "wrap on, off Thu", "wrap taken off"
saved 501
mark 502: place not called (right hind digital dermatitis)
refused line 8: is "LH" meant for what stands before it? say the foot first: LH nothing; or put ; before LH when more is to be said of it
refused line 9: A line before was not understood and may have spoken of LH, so it is not clear of which foot this is. Say the foot first: "LH spray".
saved 502
mark 503: place not called (right hind digital dermatitis)
refused line 13: "has a" is not understood; leave it out
refused line 14: A line before was not understood and may have spoken of LH, so it is not clear of which foot this is. Say the foot first: "LH block outside".
mark 503: place, degree not called (left hind sole ulcer)
saved 503

## recorded
501 | LH nothing_found; wrap_on for 2026-10-30 | RH DD raw | fine LF RF
502 | RH DD raw; spray | fine LF RF LH
503 | LH inside SU | RH DD raw | fine LF RF | unfinished: "block outside" was not understood

## ended
unfinished 503: Her turn was not finished: "block outside" was not understood
place_not_called 501: Right hind, digital dermatitis: where?
place_not_called 502: Right hind, digital dermatitis: where?
place_not_called 503: Right hind, digital dermatitis: where?
place_not_called 503: Left hind, sole ulcer: where?
degree_not_called 503: Left hind, sole ulcer: how bad?
