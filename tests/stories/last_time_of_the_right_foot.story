# What was taken over from last time stays with the foot and the cow it was found on

"LH same as last time; no, right hind" is the right hind's own last time. Where nothing is known of
that foot, or of the cow whose number is the right one, nothing is taken over, and it is asked what
was found.

## given
visit 2026-09-01
today all four
206 LH outside sole ulcer middle, bad
RH inside bruise heel, slight
rest fine
207 LH DD raw behind
208 LH outside sole ulcer middle, bad
done

## said
visit 2026-10-27
today hinds
206 LH same as last time, no, right hind
LH fine
207 LH same as last time
no, right hind
LH fine
208 LH same as last time
no, 209
RH fine
206 RH same as last time
done

## answered
told: today's feet: LH RH
mark 206: LH outside sole ulcer middle of the sole, bad (1 Sep)
mark 206: RH inside bruise heel, slight (1 Sep)
saved 206
mark 207: LH DD raw behind (1 Sep)
mark 207: RH: nothing to take over is known of it from an earlier visit; call what is found
saved 207
mark 208: LH outside sole ulcer middle of the sole, bad (1 Sep)
mark 209: put right: all that was called of 208 is hers
mark 209: LH: nothing to take over is known of it from an earlier visit; call what is found
saved 209
mark 206: RH inside bruise heel, slight (1 Sep)
saved 206

## recorded
206 | RH inside SH same as last time heel slight | fine LH
207 | RH not called | fine LH
209 | LH not called | fine RH
206 | RH inside SH same as last time heel slight

## ended
called_twice 206: Right hind was called twice in this visit. Do both calls hold?
lifted_not_called 207: Right hind: what was found?
lifted_not_called 209: Left hind: what was found?
due_not_seen 208: see again left hind is due and she was not seen
