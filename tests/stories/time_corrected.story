# "No, 5d" puts right the time that was said last, "no, wrap off 5d" that of the wrap

Also of a cow who is out, and where several can be meant it is asked.

## said
visit 2026-10-27
today hinds
410 LH DD raw; wrap on, off 3d
no, 5d
RH SU outside; block inside, off 4 weeks; see again 14d
no, block off 5 weeks
no, 21d
no, wrap off 4d
420 both hinds DD raw; both wrapped, off 3d
no, off Thu
LH no, wrap 4d
430 LH DD raw; wrap
no, wrap on, off 5d
no, wrap
never mind
no, 7 months
never mind
no, see again 3d
never mind
440 LH DD raw; wrap 3d; RH DD raw; wrap 3d
450 rest fine
440 no, wrap off 5d
440 RH no, 5d
done

## answered
told: today's feet: LH RH
mark 410: place not called (left hind digital dermatitis)
mark 410: place, degree not called (right hind sole ulcer)
saved 410
mark 420: place not called (both hinds digital dermatitis)
saved 420
mark 430: place not called (left hind digital dermatitis)
refused line 13: "wrap" cannot stand here; expected a foot, a claw, a number, a stage, a degree or a place; what was not done is not said; if it was said and is wrong: "no, no wrap"
mark 430: "no, wrap" is dropped
refused line 15: "months" is not understood; expected days or weeks, a foot, a claw, a lesion, nothing found or why she came
mark 430: "no, 7 months" is dropped
refused line 17: nothing of that kind was said with a time; say what comes off or is to happen, and when: "wrap on, off 5d", "see again 28d"
mark 430: "no, see again 3d" is dropped
saved 430
mark 440: place not called (both hinds digital dermatitis)
saved 440
refused line 21: Of 440 that could mean LH or RH. Say the foot behind her number: 440 LH no, wrap off 5d.
saved 440
told 440: now reads: 440 / LH DD raw; wrap on, off 3d / RH DD raw; wrap on, off 5d
saved 450

## recorded
410 | LH DD raw; wrap_on for 2026-10-31 | RH outside SU; block_on inside for 2026-12-01; see_again for 2026-11-17
420 | LH DD raw; wrap_on for 2026-10-31 | RH DD raw; wrap_on for 2026-10-29
430 | LH DD raw; wrap_on for 2026-11-01
440 | LH DD raw; wrap_on for 2026-10-30 | RH DD raw; wrap_on for 2026-11-01
450 | fine LH RH
