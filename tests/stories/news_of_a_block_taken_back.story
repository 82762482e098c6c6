# "300 no, no block gone" takes back what was told of her block, and no more

She does not come into the crush for it, and what it closed is open again.

## given
visit 2026-10-20
today hinds
300 LH DD raw; wrap on; RH SU outside; block inside
done

## said
visit 2026-10-27
today hinds
300 wrap off, block gone
300 no, no block gone
300 no, no block gone
done

## answered
told: today's feet: LH RH
told 300: closed: wrap off left hind
told 300: closed: block check right hind, inside claw; block off right hind, inside claw; block still on? right hind, inside claw; to do: ring trimmer: block lost early, right hind
told 300: taken back: 300 wrap off, block gone
told 300: closed: wrap off left hind
there already 300
mark: no cow is in the crush

## cow 300
on her: block RH inside since 2026-10-20
case: DD LH, found 1x
case: SU RH outside, found 1x
2026-10-20 LH: digital dermatitis, raw (DD); wrap on
2026-10-20 RH: outside claw: sole ulcer (SU); block on, inside claw
