# "Picked it out" is no slip of "nicked it": that blood was drawn is never proposed

## said
visit 2026-10-27
today hinds
518 LH stone in it, picked it out, slight
LH stone in it, slight
rest fine
done
519 LH stone in it, nickd it, slight
LH stone in it, slight; nicked it outside
rest fine
done

## answered
told: today's feet: LH RH
refused line 2: "picked" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree
refused line 2: "it out" is not understood either
saved 518
refused line 6: "nickd it" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "nicked it"?
saved 519

## recorded
518 | LH foreign_body slight | fine RH
519 | LH foreign_body slight; outside blood_drawn | fine RH

## ended
