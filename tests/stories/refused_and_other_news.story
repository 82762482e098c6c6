# News of a cow does not do away with a refused line about her that it does not say again

## given
visit 2026-10-13
today hinds
513 LH DD raw behind; wrap on
rest fine
514 nothing found
done

## said
visit 2026-10-27
today hinds
513 RH outsde sole ulcer bad, vet
513 wrap off
514 nothing found
514 stil lame
514 still lame
done

## answered
told: today's feet: LH RH
refused line 2: "outsde" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
told 513: closed: wrap off left hind
mark 513: "513 RH outsde sole ulcer bad, vet" was not understood, nor said again
saved 513
refused line 5: "stil" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree
told 514: to do: still lame, look at her feet
saved 514

## ended
unfinished 513: Her turn was not finished: "513 RH outsde sole ulcer bad, vet" was not understood
lifted_not_called 513: Right hind: what was found?
