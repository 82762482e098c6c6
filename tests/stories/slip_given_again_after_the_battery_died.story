# A pipe that starts anew gives the slips once more, and what mended them: nothing is left open

## said together
visit 2026-10-27
today hinds
553 lame LH
LH otside SU
LH outside SU
RH DD rwa
RH DD; raw

## the battery dies

## from a file
553 lame LH
LH otside SU
LH outside SU
RH DD rwa
RH DD; raw
rest fine
done

## answered
told: today's feet: LH RH
refused line 3: "otside" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
mark 553: place, degree not called (left hind sole ulcer)
refused line 5: "rwa" is not understood; expected a place, a stage, a degree, words in quotes, a claw or a foot; did you mean "raw"?
mark 553: place not called (right hind digital dermatitis)
mark 553: still in the crush: 553 lame LH / LH outside SU / RH DD; raw
refused line 2: "otside" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
refused line 4: "rwa" is not understood; expected a place, a stage, a degree, words in quotes, a claw or a foot; did you mean "raw"?
mark 553: place, degree not called (left hind sole ulcer)
mark 553: place not called (right hind digital dermatitis)
saved 553

## ended
place_not_called 553: Left hind, sole ulcer: where?
place_not_called 553: Right hind, digital dermatitis: where?
degree_not_called 553: Left hind, sole ulcer: how bad?
