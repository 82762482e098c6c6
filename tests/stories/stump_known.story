# A stump is known by the cow: the other claw of that foot is squared up

"Stump's healed, square up the other one" names no foot. One foot of hers has a claw missing: it is
that one, its other claw was trimmed, and that the stump is healed stays in words; "rest fine" behind it
speaks of that foot as well. With two stumps it
is asked which; with none known the way to say it is told.

## given
visit 2026-09-01
today all four
601 lame RH
RH outside claw missing
rest fine
602 lame LH
LH inside claw missing
RH outside claw missing
rest fine
done

## said
visit 2026-10-27
today all four
601 stump's healed, square up the other one
rest fine
602 stump's healed, square up the other one
LH stump's healed, square up the other one
rest fine
603 stump's healed, square up the other one
LH outside stump; stump's healed, square up the other one
rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 601: RH claw missing outside (known since 1 Sep)
refused line 4: a claw is missing on more than one foot; say the foot first: "LH stump's healed", "RH stump's healed"
saved 601
mark 602: LH claw missing inside (known since 1 Sep)
refused line 7: no claw of hers is known to be missing; say first which one: "LH inside claw missing"
saved 602
mark 603: LH claw missing outside (told today)
saved 603

## recorded
601 | RH nothing_found; trimmed | fine LF RF LH
602 | LH nothing_found; trimmed | fine LF RF RH
603 | LH nothing_found; claw_missing outside; trimmed | fine LF RF RH
