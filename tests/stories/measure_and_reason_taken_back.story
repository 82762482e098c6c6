# A measure that was not taken and a reason that was not hers are taken back by word

## said
visit 2026-10-27
today hinds
412 fresh, lame LH
LH outside length 78 mm; heel 48 mm
no, no 48 mm
no, not fresh
rest fine
done
no, not lame

## answered
told: today's feet: LH RH
saved 412
saved 412

## recorded
412 | LH not called | fine RH

## cow 412
2026-10-27 LH: outside claw, toe length 78 mm
2026-10-27 RH: nothing found

## ended
lifted_not_called 412: Left hind: what was found?
