# What became of the wrap of a cow without a number is told by the words she was called by

Nobody knows her number, and she carries a wrap. Two who look alike are told apart by the day.

## given
visit 2026-09-29
today hinds
no number, red cow
RH DD raw behind; wrap on
no number, brown heifer
LH SU outside middle bad; block on inside
done
visit 2026-10-13
today hinds
no number, brown heifer
RH SU outside middle bad; block on inside
done

## from a file
visit 2026-10-27
today hinds
red cow wrap off
brown heifer block off
brown heifer of 2026-10-13 block off
413 nothing found
done

## answered
told: today's feet: LH RH
told red cow: closed: wrap off right hind
refused line 3: No cow of this herd carries the number brown heifer.
told brown heifer of 2026-10-13: closed: block check right hind, inside claw; block off right hind, inside claw; block still on? right hind, inside claw
saved 413

## the same file again

## answered
there already red cow
refused line 3: No cow of this herd carries the number brown heifer.
there already brown heifer of 2026-10-13
there already 413

## ended
due_not_seen brown heifer: block check left hind, inside claw is due and she was not seen
due_not_seen brown heifer: block off left hind, inside claw is due and she was not seen
