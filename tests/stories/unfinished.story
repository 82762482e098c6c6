# Input that breaks off leaves an unfinished turn, and the file given again completes it

## from a file
visit 2026-10-27
today all four
412 lame LH
LH outside white line abscess heel, bad; opened

## answered
told: today's feet: LF RF LH RH
saved 412

## turns
412: 1, unfinished

## ended
unfinished 412: Her turn was not finished: the input ended

## from a file
today all four
412 lame LH
LH outside white line abscess heel, bad; opened
block on inside
rest fine
done

## answered
saved 412

## turns
412: 1

## cow 412
on her: block LH inside since 2026-10-27
case: WLA LH outside, found 1x
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH (lame): outside claw: white line abscess, heel, bad (WLA); opened; block on, inside claw
2026-10-27 RH: nothing found
