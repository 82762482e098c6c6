# The claw beside the missing one is offered on the foot that has it

## said
visit 2026-10-27
today all four
513 LH stump outside, RH fine, fronts fine
square up the other one
LH square up the other one
rest fine
done

## answered
told: today's feet: LF RF LH RH
refused line 3: no claw of hers is known to be missing there; say the foot first: "LH square up the other one"
mark 513: LH claw missing outside (told today)
saved 513

## ended
