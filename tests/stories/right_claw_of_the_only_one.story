# The right claw of a lesion is of the foot on which it was called

## said
visit 2026-10-27
today all four
26 LH inside SU
LF fine
RF DD raw
RH fine
27 LH SU; RH SU
rest fine
28 all good
26 no, outside SU
27 no, outside SU
27 RH no, outside SU
done

## answered
told: today's feet: LF RF LH RH
mark 26: place, degree not called (left hind sole ulcer)
mark 26: place not called (right front digital dermatitis)
saved 26
mark 27: claw, place, degree not called (both hinds sole ulcer)
saved 27
saved 26
told 26: now reads: 26 / LH outside sole ulcer / LF nothing found / RF DD raw / RH nothing found
refused line 10: Of 27 that could mean LH or RH. Say the foot behind her number: 27 LH no, outside SU.
saved 27
told 27: now reads: 27 rest fine / LH sole ulcer / RH outside sole ulcer / LF nothing found / RF nothing found
saved 28

## recorded
26 | RF DD raw | LH outside SU | fine LF RH
27 | LH SU | RH outside SU | fine LF RF
28 | fine LF RF LH RH

## ended
place_not_called 26: Left hind, sole ulcer: where?
place_not_called 26: Right front, digital dermatitis: where?
place_not_called 27: Left hind, sole ulcer: where, and on which claw?
place_not_called 27: Right hind, sole ulcer: where?
degree_not_called 26: Left hind, sole ulcer: how bad?
degree_not_called 27: Both hinds, sole ulcer: how bad?
