# "Not lame" and "vet not needed" are kept in words, unless the opposite was said

## said
visit 2026-10-27
today hinds
301 vet not needed, not lame
rest fine
302 lame LH
LH sole ulcer outside middle, bad; block inside; vet
not lame
no, not lame LH
vet not needed
LH no, no vet
vet not needed
rest fine
done

## answered
told: today's feet: LH RH
saved 301
refused line 6: she was said to be lame; if she is not, say "no, not lame"
refused line 8: the vet was said before; if the vet is not needed, say "no, no vet", the foot before it when it was said of a foot
saved 302

## recorded
301 | fine LH RH | note: vet not needed; not lame
302 | LH outside SU sole_middle bad; block_on inside | fine RH | note: vet not needed
