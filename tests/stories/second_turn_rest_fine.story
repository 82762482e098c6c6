# "Rest fine" in a second turn leaves the feet of the first turn alone

## said
visit 2026-10-27
today hinds
412 LH DD raw behind
done
412 rest fine
done

## answered
told: today's feet: LH RH
saved 412
saved 412

## ended

## cow 412
case: DD LH, found 1x
2026-10-27 LH: digital dermatitis, raw, behind (DD)
2026-10-27 RH: nothing found
