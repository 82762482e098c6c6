# "Rest fine" in a second turn leaves the feet of the first turn alone

## said
visit 2026-10-27
today hinds
412 LH DD raw behind
done
412 rest fine
done

## answered

## ended

## cow 412
