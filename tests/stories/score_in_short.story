# A score that lacked its scale is answered by the score alone

## said
visit 2026-10-27
today hinds
54 mobility 3
3 of 5
all good
done
55 all good
3 of 5
done

## answered
told: today's feet: LH RH
refused line 2: on which scale is mobility 3? say "mobility 3 of 3" (0-3) or "mobility 3 of 5" (1-5)
mark 54: taken as: mobility 3 of 5
saved 54
refused line 7: "of" cannot stand here; expected a foot, a claw, a lesion, nothing found, why she came or a degree
mark 55: "3 of 5" was not understood, nor said again
saved 55

## recorded
54 | fine LH RH
55 | fine LH RH | unfinished: "3 of 5" was not understood

## ended
unfinished 55: Her turn was not finished: "3 of 5" was not understood
