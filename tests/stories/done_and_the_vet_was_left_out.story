# "Done" ends a second call, and what was called in a line nobody could read is still asked about

## said
visit 2026-10-27
today hinds
410 LH SU outt; vet
411 rest fine
410 LH SU out
done
412 LH SU outt
413 rest fine
412 LH SU out
done
done

## recorded
411 | fine LH RH
410 | LH outside SU | unfinished: "410 LH SU outt; vet" was not understood
413 | fine LH RH
412 | LH outside SU

## ended
unfinished 410: Her turn was not finished: "410 LH SU outt; vet" was not understood
lifted_not_called 412: Right hind: not lifted, or what was found?
place_not_called 410: Left hind, sole ulcer: where?
place_not_called 412: Left hind, sole ulcer: where?
degree_not_called 410: Left hind, sole ulcer: how bad?
degree_not_called 412: Left hind, sole ulcer: how bad?
