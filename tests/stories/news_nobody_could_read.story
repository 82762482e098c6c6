# News nobody could read brings no cow into the crush while the turn of another is under way

Her who stands there is not let out by it, and "never mind" takes it back.

## given
visit 2026-10-13
today hinds
101 LH DD raw; wrap on
rest fine
102 LH DD raw; wrap on
rest fine
105 RH DD raw; wrap on
rest fine
done

## said
visit 2026-10-27
today hinds
101 warp off
never mind
109 LH SU outside heel, bad
102 still lame, wrap's gone; 105 wrap on still
rest fine
done
110 LH SU outside heel, bad
102 wrap off?
RH bruise
102 wrap off
105 wrap on still
rest fine
done
111 LH SU outside heel, bad
101 warp off
never mind
RH nothing found
done

## answered
told: today's feet: LH RH
refused line 2: "warp off" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "wrap off"?
mark 101: "101 warp off" is dropped
refused line 5: "wrap on" is done to a cow in the crush; start a line with her number alone, then name the foot
refused line 5: "still" is not understood; expected a foot or today's feet
saved 109
refused line 9: "?" cannot stand here; expected a foot or today's feet; a question mark stands behind the number of a cow or what was found
refused line 10: The line before told of 102, so it is not clear whose this is. Of her in the crush: "110 RH bruise"; of 102: "102 RH bruise".
told 102: closed: wrap off left hind
refused line 12: no foot is named for what was done; say the foot first: LF, RF, LH, RH
refused line 12: "still" is not understood; expected when it comes off, today's feet, a foot, a claw, a lesion or nothing found
mark 110: right hind stays open: what was said of it was not understood
mark 110: "RH bruise" was not understood, nor said again
saved 110
refused line 16: "warp off" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "wrap off"?
mark 101: "101 warp off" is dropped
saved 111

## recorded
109 | LH outside SU heel bad | fine RH
110 | LH outside SU heel bad | RH not called | unfinished: "RH bruise" was not understood
111 | LH outside SU heel bad | fine RH

## ended
unfinished 110: Her turn was not finished: "RH bruise" was not understood
lifted_not_called 110: Right hind: what was found?
news_unclear 102: "102 still lame, wrap's gone; 105 wrap on still": This was not understood. What was told?
news_unclear 105: "102 still lame, wrap's gone; 105 wrap on still": This was not understood. What was told?
news_unclear 105: "105 wrap on still": This was not understood. What was told?
due_not_seen 101: wrap off left hind is due and she was not seen
due_not_seen 105: wrap off right hind is due and she was not seen
