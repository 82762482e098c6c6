# Nothing found, said after a wrap off that named no foot

The wrap is off the one foot that carries one. What became of it tells nothing of the feet, so the feet are
what the next line says, that one too; named after all it is the same wrap.

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
mark 102: RH: wrap on since 13 Oct, 14 days, 9 late
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
