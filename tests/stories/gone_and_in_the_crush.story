# A cow told gone at the gate that stands in the crush is asked about when the visit ends

The farmer mistook her, or she is not fetched yet. Her tasks stay, for she is here; somebody has to
say whether it was she that left.

## given
visit 2026-09-29
today all four
77 lame RH
RH outside white line abscess heel, bad; block on inside
rest fine

## said
visit 2026-10-27
today all four
77 gone
77 recheck
RH outside white line abscess heel, slight; block taken off
rest fine
done

## answered
told: today's feet: LF RF LH RH
told 77: closed: block check right hind, inside claw; block off right hind, inside claw; block still on? right hind, inside claw
question 77: 77 was said to be gone today. Is she still here?
saved 77

## ended
told_gone 77: Said to be gone today, and in the crush: is she still here?

## due 2026-10-27
