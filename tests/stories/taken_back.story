# A finding that was not there is taken back by word, in the crush

The words as said stay in the record; what is pictured is what holds.

## said
visit 2026-10-27
today hinds
412 lame LH
LH outside white line abscess heel, bad; block on outside
no, no white line abscess
no, no block
LH inside sole ulcer middle, plain; block on outside
RH outside bruise middle, slight
no, sole ulcer
nothing after all
done

## answered
told: today's feet: LH RH
stop 412: Block on the claw with the white line abscess (left hind outside). Inside meant? (answer: no, inside / go ahead)
refused line 8: it is unclear whether "sole ulcer" is right or was wrong; if it was wrong, say "no, no sole ulcer"; if it is right, take back the other one
saved 412

## cow 412
on her: block LH outside since 2026-10-27
case: SU LH inside, found 1x
2026-10-27 LH (lame): inside claw: sole ulcer, middle of the sole, plain (SU); block on, outside claw
2026-10-27 RH: nothing found

## due 2026-10-27
coming 412: block still on? left hind, outside claw (farmer, by 2026-11-04)
coming 412: block check left hind, outside claw (trimmer, by 2026-11-24)
coming 412: block off left hind, outside claw (trimmer, by 2026-12-01)

## ended
