# The battery dies with a cow in the crush, and her turn goes on

## said
visit 2026-10-27
today all four
412 lame LH
LH outside white line abscess heel, bad; opened

## answered
told: today's feet: LF RF LH RH

## the battery dies

## said
LH block on inside
rest fine
done

## answered
mark 412: still in the crush: 412 lame LH / LH outside white line abscess heel, bad; opened
saved 412

## cow 412
on her: block LH inside since 2026-10-27
case: WLA LH outside, found 1x
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH (lame): outside claw: white line abscess, heel, bad (WLA); opened; block on, inside claw
2026-10-27 RH: nothing found
