# Who answers what was asked and says no more has not left her unfinished

She was called to the end before. Who was not, or is called of another foot, still is.

## said
visit 2026-10-27
today hinds
412 LH sole ulcer outside heel
rest fine
413 LH
done

## ended
lifted_not_called 413: Left hind: what was found?
lifted_not_called 413: Right hind: not lifted, or what was found?
degree_not_called 412: Left hind, sole ulcer: how bad?

## from a file
412 LH sole ulcer bad

## from a file
413 LH sole ulcer outside heel, bad

## answered
told: today's feet: LH RH
mark 412: degree not called (left hind sole ulcer)
saved 412
saved 413
saved 412
saved 413

## ended
lifted_not_called 413: Right hind: not lifted, or what was found?
