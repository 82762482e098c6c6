# "Yes" and "hang on" name no cow, so what follows is of her in the crush

They are refused with the answers to what was asked. What goes on behind them with a number or with
what a cow looks like may have named another one as before.

## said
visit 2026-10-27
today hinds
203 LH outside SU, block outside
yes
no, inside
RH fine
done
204 LH fine
hang on
RH DD raw
oops, sorry
done
205 LH fine
yes, next 413
RH DD raw
205 RH DD raw
done

## answered
told: today's feet: LH RH
mark 203: place, degree not called (left hind sole ulcer)
stop 203: Block on the claw with the sole ulcer (left hind outside). Inside meant? (answer: no, inside / go ahead)
refused line 3: "yes" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found; right as it was called: "go ahead"; not so: "no, ..." with what holds.
saved 203
refused line 8: "hang" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found
mark 204: place not called (right hind digital dermatitis)
refused line 10: "oops" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found
refused line 10: "sorry" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree
saved 204
refused line 13: "yes" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found
refused line 13: "next" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree
saved 205
refused line 14: A line before may have named another cow, so it is not clear whose this is. Say her number, and this once more.
mark no number: "yes, next 413", "RH DD raw" were not understood, nor said again
saved no number
mark 205: place not called (right hind digital dermatitis)
saved 205

## ended
unnumbered no number: Which number has she?
unfinished no number: Her turn was not finished: "yes, next 413", "RH DD raw" were not understood
lifted_not_called no number: Right hind: what was found?
place_not_called 203: Left hind, sole ulcer: where?
place_not_called 204: Right hind, digital dermatitis: where?
place_not_called 205: Right hind, digital dermatitis: where?
degree_not_called 203: Left hind, sole ulcer: how bad?

## recorded
203 | LH outside SU; block_on inside | fine RH
204 | RH DD raw | fine LH
205 | fine LH
no number | RH not called | unfinished: "yes, next 413", "RH DD raw" were not understood
205 | RH DD raw
