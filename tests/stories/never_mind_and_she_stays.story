# "Never mind" drops the line that was refused, and not the cow it named

Her number was clear, so what is called next is hers. With her number before it, "never mind" says
that she was never there.

## said
visit 2026-10-27
today hinds
107 nothing found
108 LH outsde SU
never mind
RH DD raw behind
rest fine
109 LH outsde SU
109 never mind
110 LH outsde SU
never mind
111 nothing found
done

## answered
told: today's feet: LH RH
refused line 3: "outsde" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
saved 107
mark 108: "108 LH outsde SU" is dropped
refused line 7: "outsde" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
saved 108
mark 109: "109 LH outsde SU" is dropped
refused line 9: "outsde" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
mark 110: "110 LH outsde SU" is dropped
saved 110
saved 111

## recorded
107 | fine LH RH
108 | RH DD behind raw | fine LH
110 | unfinished: nothing was said
111 | fine LH RH

## from a file
112 LH outsde SU
never mind
RH DD raw behind
rest fine
113 nothing found

## answered
refused line 1: "outsde" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
mark 112: "112 LH outsde SU" is dropped
saved 112
saved 113

## recorded
107 | fine LH RH
108 | RH DD behind raw | fine LH
110 | unfinished: nothing was said
111 | fine LH RH
112 | RH DD behind raw | fine LH
113 | fine LH RH | unfinished: the input ended
