# Swollen on one side and nicked on the other back: the foot is asked first, the other follows from it

Nobody named the foot of the swelling, so the other back is nobody's either. The foot alone answers;
then above which claw is asked. No block is put down, and the vet is to come. The other back of a foot
nobody spoke of is nobody's, and blood by itself could be in the horn.

## said
visit 2026-10-27
today all four
701
blew up above the claw on one side, leave it for the vet; and I nicked her other back, bit of blood at the toe
LH
LH outside swelling
rest fine
702 LH blew up above the claw on one side, leave it for the vet
nicked her other back, blood at the toe
LH inside swelling
rest fine
703 nicked her other back, blood at the toe
never mind
703 RH nicked it, blood at the toe
rest fine
704 LH bit of blood at the toe
LH bit of bruise at the toe
rest fine
done

## answered
told: today's feet: LF RF LH RH
refused line 3: no foot is named for swelling; say the foot first: LF, RF, LH, RH
mark 701: taken as: LH blew up above the claw on one side, leave it for the vet; and I nicked her other back, bit of blood at the toe
mark 701: place, degree not called (left hind swelling)
mark 701: claw not called (right hind blood drawn)
ask 701: Swollen on one side (left hind): above which claw? (answer: LH outside swelling / LH inside swelling)
saved 701
mark 702: place, degree not called (left hind swelling)
ask 702: Swollen on one side (left hind): above which claw? (answer: LH outside swelling / LH inside swelling)
mark 702: claw not called (right hind blood drawn)
refused line 11: no foot is named for blood drawn; say the foot first: LF, RF, LH, RH
refused line 11: it is unclear which foot is the other one; say the foot: LH, RH
saved 702
mark 703: "703 nicked her other back, blood at the toe" is dropped
mark 703: claw not called (right hind blood drawn)
ask 703: Blood drawn on 3 feet today, one caller: leave more sole, or change hands? (answer: go ahead)
refused line 15: "blood" could mean more than one thing; which is it: bruise, blood drawn, or bleeding does not stop?
saved 703
mark 704: claw not called (left hind sole haemorrhage)
saved 704

## recorded
701 | LH outside SW on one side; vet | RH blood_drawn toe slight | fine LF RF
702 | LH inside SW on one side; vet | RH blood_drawn toe | fine LF RF
703 | RH blood_drawn toe | fine LF RF LH
704 | LH SH toe slight | fine LF RF RH
