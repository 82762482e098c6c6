# What was not understood of a cow told to be gone today is hers, and of no second cow of her number

## given
visit 2026-10-20
today hinds
320 LH SU middle, bad
rest fine
done

## said
visit 2026-10-27
today hinds
320 died
320 lmae
320 lame LH
LH nothing found
rest fine
done

## answered
told: today's feet: LH RH
told 320: closed: look at left hind, ring if no better; see again left hind
refused line 3: "lmae" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "lame"?
question 320: 320 was said to be gone today. Is she still here?
stop 320: Came lame left hind, nothing found: look again, look higher, or vet. (answer: LH vet / go ahead)
stop 320: Came lame left hind, nothing found: look again, look higher, or vet. (answer: LH vet / go ahead)

## ended
told_gone 320: Said to be gone today, and in the crush: is she still here?
unanswered 320: Came lame left hind, nothing found: look again, look higher, or vet.
