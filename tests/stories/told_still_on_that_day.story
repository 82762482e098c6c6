# What was told to be still on that day is not asked for when she comes

And news that stood in a line without her number names her when it is kept.

## given
visit 2026-10-20
today hinds
613 LH outside SU, middle, bad; block on inside; rest fine
563 RH outside SU, middle, bad; block on inside; rest fine
done

## said
visit 2026-10-27
today hinds
news 613 block still on
613 LH outside SU, middle, bad; rest fine
563 block on
RH block still on
411 rest fine
done

## answered
told: today's feet: LH RH
told 613: closed: block still on? left hind, inside claw
refused line 4: no foot is named for what was done; say the foot first: LF, RF, LH, RH
saved 613
told 563: closed: block still on? right hind, inside claw
mark 563: taken as news of her; if she was in the crush, say her number and what was found
saved 411

## cow 563
on her: block RH inside since 2026-10-20
case: SU RH outside, found 1x
2026-10-20 LH: nothing found
2026-10-20 RH: outside claw: sole ulcer, middle of the sole, bad (SU); block on, inside claw

## ended
