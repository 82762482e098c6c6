# What is the same as last time is known of a cow without a number by her words

She is not made one with the other for it: whether they are is asked when the visit closes.

## given
visit 2026-10-20
today hinds
no number, brown heifer, white star; LH DD raw behind; RH SU outside, middle, bad
done

## said
visit 2026-10-27
today hinds
no number, brown heifer, white star
LH same as last time
RH SU outside, middle, bad, better
done
no number, black heifer; LH DD raw behind, better
rest fine
done

## answered
told: today's feet: LH RH
mark brown heifer, white star: LH DD raw behind (20 Oct)
mark brown heifer, white star: as found on the one called so on 20 Oct
mark brown heifer, white star: RH outside sole ulcer middle of the sole, bad (20 Oct)
mark brown heifer, white star: as found on the one called so on 20 Oct
saved brown heifer, white star
mark black heifer: LH: nothing is known of it from an earlier visit
saved black heifer

## recorded
brown heifer, white star | LH DD same as last time behind raw | RH outside SU better sole_middle bad
black heifer | LH DD better behind raw | fine RH

## ended
unnumbered black heifer: Which number has she: black heifer?
unnumbered brown heifer, white star: Which number has she: brown heifer, white star? Or is she the one of 20 Oct? Then: evenclaw cow same "brown heifer, white star" "brown heifer, white star of 2026-10-20"
