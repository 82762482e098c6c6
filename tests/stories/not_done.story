# A cow that was not done is listed with the reason

## said
visit 2026-10-27
today all four
298 not done, lay down in the crush
299 LH outside sole ulcer
done

## answered
told: today's feet: LF RF LH RH
mark 298: kept as why; to be told so when she comes again say "lies down" on its own
saved 298
mark 299: place, degree not called (left hind sole ulcer)
saved 299

## ended
not_done 298: She was not done: lay down in the crush
lifted_not_called 299: Left front, right front and right hind: not lifted, or what was found?
place_not_called 299: Left hind, sole ulcer: where?
degree_not_called 299: Left hind, sole ulcer: how bad?
