# A fresh cow that is lame came for both, and the check for lame cows holds for her too

What was measured and the words of another reason are shown with the rest.

## said
visit 2026-10-27
today hinds
412 fresh lame LH
rest fine
LH inside thin sole toe, plain; sole 4 mm; toe 78 mm long
done
513 dry off, lame
rest fine
go ahead
done

## answered
told: today's feet: LH RH
mark 412: left hind was fine a line before. Not hers? "nothing after all", then the right number
saved 412
stop 513: Came lame, nothing found: look at all four, look higher, or vet. (answer: vet / go ahead)
saved 513

## cow 412
case: TS LH inside, found 1x
2026-10-27 LH (lame): inside claw: thin sole, toe, plain (TS); sole thickness 4 mm; toe length 78 mm
2026-10-27 RH: nothing found
