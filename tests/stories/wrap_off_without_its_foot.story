# Where two feet carry a wrap, one told to be off at the crush lacks its foot

"102 wrap off, nothing found" is how it is said, and nobody said on which foot. It is refused with the
lines that read, and nothing is left open once one is said.

## given
visit 2026-10-13
today all four
102 lame RH
both hinds DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
today all four
102 wrap off, nothing found
102 both hinds wrap off, nothing found; rest fine
done

## answered
told: today's feet: LF RF LH RH
refused line 2: no foot is named for what was done; say the foot first: "LH wrap taken off", "RH wrap taken off"
saved 102

## ended
