# Left for right is asked about when the other foot is the one that is known

## given
visit 2026-10-13
today all four
118 lame LH
LH outside sole ulcer middle, bad; block on inside; see again 14d
rest fine
done

## said
visit 2026-10-27
today all four
118 recheck
RH outside sole ulcer middle, slight; block still on
no, left hind
rest fine
done

## answered

## cow 118
