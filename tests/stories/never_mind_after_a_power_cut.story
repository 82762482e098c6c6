# A line that was not understood can be dropped with "never mind" after the battery died as well

## said
visit 2026-10-27
today all four
412 LH DD raw
LH outsde SU

## the battery dies

## said
never mind
rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 412: place not called (left hind digital dermatitis)
refused line 3: "outsde" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
mark 412: still in the crush: 412 LH DD raw
mark 412: "LH outsde SU" is dropped
mark 412: place not called (left hind digital dermatitis)
saved 412
