# "No, 421" after she was let out corrects the last turn

The record of 412 no longer holds it; nothing is lost, for the correction is a new entry. Who looks
for 412 is shown 421, and that she was called so.

## said
visit 2026-10-27
today all four
412 lame LH
LH outside white line abscess heel, bad; opened; block on inside
rest fine
done
no, 421
430 nothing found
done

## answered
told: today's feet: LF RF LH RH
saved 412
saved 421
saved 430

## cow 412
cow 421, called 412 on 2026-10-27, then put right
on her: block LH inside since 2026-10-27
case: WLA LH outside, found 1x
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH (lame): outside claw: white line abscess, heel, bad (WLA); opened; block on, inside claw
2026-10-27 RH: nothing found

## cow 421
cow 421, called 412 on 2026-10-27, then put right
on her: block LH inside since 2026-10-27
case: WLA LH outside, found 1x
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH (lame): outside claw: white line abscess, heel, bad (WLA); opened; block on, inside claw
2026-10-27 RH: nothing found

## turns
421: 1
430: 1
