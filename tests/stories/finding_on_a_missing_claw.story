# A finding on a claw that is missing is asked about, and the answers that come to mind settle it

The claw alone is the correction. That the claw is there is told what to say: it is right as it was
called, or it is not.

## given
visit 2026-10-20
today hinds
104 RH inside claw missing; rest fine
105 RH inside claw missing; rest fine
106 RH inside claw missing; rest fine
done

## said
visit 2026-10-27
today hinds
104 RH inside SU heel bad
no, outside
rest fine
105 RH inside SU heel bad
outside
rest fine
106 RH inside SU heel bad
it's there
claw is there
go ahead
rest fine
107 RH inside stump; inside SU heel bad
out
rest fine
done

## answered
told: today's feet: LH RH
ask 104: Right hind: sole ulcer on the inside claw, which is missing. Which claw? (answer: no, outside / go ahead)
saved 104
ask 105: Right hind: sole ulcer on the inside claw, which is missing. Which claw? (answer: no, outside / go ahead)
mark 105: taken as: no, outside
saved 105
ask 106: Right hind: sole ulcer on the inside claw, which is missing. Which claw? (answer: no, outside / go ahead)
refused line 9: "it's there" is not understood; right as it was called: "go ahead"; not so: "no, ..." with what holds.
refused line 10: "claw" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found; right as it was called: "go ahead"; not so: "no, ..." with what holds.
refused line 10: "is there" is not understood either
saved 106
ask 107: Right hind: sole ulcer on the inside claw, which is missing. Which claw? (answer: no, outside / go ahead)
mark 107: taken as: no, outside
saved 107

## recorded
104 | RH outside SU heel bad | fine LH
105 | RH outside SU heel bad | fine LH
106 | RH inside SU heel bad | fine LH
107 | RH outside SU heel bad; claw_missing inside | fine LH

## ended
