# A slip in the second foot of a line is mended by the line said again

## said
visit 2026-10-27
today all four
501 LH ok; frnts fine
LH ok; fronts fine
rest fine
502 LH SU; RHH fine
LH SU; LF fine
rest fine
done

## answered
told: today's feet: LF RF LH RH
refused line 2: "frnts" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "fronts"?
refused line 5: "RHH" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "RH"?
saved 501
mark 502: claw, place, degree not called (left hind sole ulcer)
mark 502: "502 LH SU; RHH fine" was not understood, nor said again
saved 502

## ended
unfinished 502: Her turn was not finished: "502 LH SU; RHH fine" was not understood
place_not_called 502: Left hind, sole ulcer: where, and on which claw?
degree_not_called 502: Left hind, sole ulcer: how bad?
