# Nothing found, said after a wrap off that was refused

What became of a wrap tells nothing of the feet, so the feet are what the next line says, and the wrap is
asked about by its foot.

## given
visit 2026-10-13
today all four
102 lame RH
RH DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
today all four
102
wrap off
nothing found
RH wrap off
done

## answered
told: today's feet: LF RF LH RH
refused line 3: no foot is named for what was done; say the foot first: "RH wrap taken off"
ask 102: Wrap on right hind since 13 Oct (14 d): still on? (answer: RH wrap still on / RH wrap came off by itself / RH wrap taken off / RH wrap don't know)
saved 102

## cow 102
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH: nothing found
2026-10-27 RH: nothing found; wrap taken off
2026-10-13 LF: nothing found
2026-10-13 RF: nothing found
2026-10-13 LH: nothing found
2026-10-13 RH (lame): digital dermatitis, raw, behind (DD); wrap on

## ended
