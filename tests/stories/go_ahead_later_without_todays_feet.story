# "45 go ahead" settles what she left with, also where nobody said which feet are lifted

The question was whether the right foot was named. It is answered two cows later and not asked again.

## given
visit 2026-10-01
today all four
45 RH SU outside heel bad
rest fine
done

## said
visit 2026-10-27
45 lame
LH SU outside heel bad; opened; block on inside
rest fine
54 all good
done
45 go ahead
done

## answered
ask 45: The sole ulcer of 1 Oct was on right hind. Right hind meant? (answer: no, RH / go ahead)
question: Which feet are lifted today? Until that is said "rest fine" fills none. (answer: today all four / today both hinds)
saved 45
saved 54
saved 45

## ended
lifted_not_called 45: The rest was said to be fine, and nobody said which feet are lifted today.
lifted_not_called 54: The rest was said to be fine, and nobody said which feet are lifted today.
