# The talk at the gate closes many tasks in one line

"412, 513 wraps off; 77 gone; 620 still lame": two wraps are off, one cow has left, and one is to
be looked at today.

## given
visit 2026-10-20
today all four
412 lame RH
RH DD raw behind; wrap on
rest fine
513 lame LH
LH DD M2 behind; wrap on
rest fine
77 lame RH
RH outside white line abscess heel, bad; block on inside
rest fine
620 lame LH
LH outside bruise middle, plain; see again 28d
rest fine
done

## said
visit 2026-10-27
today all four
412, 513 wraps off; 77 gone; 620 still lame

## answered
told: today's feet: LF RF LH RH
told 412: closed: wrap off right hind
told 513: closed: wrap off left hind
told 77: closed: block check right hind, inside claw; block off right hind, inside claw; block still on? right hind, inside claw
told 620: to do: still lame, look at her feet

## due 2026-10-27
due 620: still lame, look at her feet (trimmer, by 2026-10-27)
due 412: look at the sore on right hind (farmer, by 2026-10-30)
due 513: look at the sore on left hind (farmer, by 2026-10-30)
coming 620: see again left hind (trimmer, by 2026-11-17)

## ended
due_not_seen 620: still lame, look at her feet: told today, and she was not seen
