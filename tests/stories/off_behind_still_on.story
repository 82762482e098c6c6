# A block seen on in the crush and then told off is asked about, as it is the other way round

Which of the two holds only who was there knows. Until it is said again the block is on.

## given
visit 2026-10-20
today hinds
101 LH outside SU, heel, bad; block on inside, off 4 weeks; rest fine
102 LH outside SU, heel, bad; block on inside; RH outside SU, heel, bad; block on inside; rest fine
103 LH DD raw behind; wrap on, off 3d; rest fine
done

## said
visit 2026-10-27
today hinds
101 LH block still on; DD chronic behind
rest fine
102 LH block still on; DD chronic behind
RH block still on; rest fine
done
101 blocks off
102 blocks off
102 RH block off
101 blocks off
103 wrap still on
103 wrap off
done

## answered
told: today's feet: LH RH
saved 101
saved 102
question 101: Her block on left hind was said to be still on in the crush. Is it off, or still on? Say this again if it is off.
question 102: Her blocks on both hinds were said to be still on in the crush. Are those off, or still on? Say this again if they are off.
told 102: closed: block check right hind, inside claw; block off right hind, inside claw
told 101: closed: block off left hind, inside claw
told 103: noted
told 103: closed: wrap off left hind
mark: no cow is in the crush

## ended
lifted_not_called 102: Right hind: what was found?

## due 2026-10-27
due 103: look at the sore on left hind (farmer, by 2026-10-30)
coming 102: block check left hind, inside claw (trimmer, by 2026-11-17)
coming 102: block off left hind, inside claw (trimmer, by 2026-11-24)
