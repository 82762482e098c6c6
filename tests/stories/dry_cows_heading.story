# A heading is nobody's: it is refused with how to write one, and stays with no cow

"77 gone dry" is how drying off is told, and begins the next cow.

## said
visit 2026-10-27
today hinds
98 LH DD raw behind
dry cows
rest fine
77 gone dry
all good
done

## answered
told: today's feet: LH RH
refused line 3: "dry cows" cannot stand here; expected a foot, a number, "no number", a claw, a lesion or nothing found; nobody is named: as a heading say "# dry cows"; to count them say how many before it
saved 98
saved 77

## recorded
98 | LH DD behind raw | fine RH
77 dry_off | fine LH RH

## ended
