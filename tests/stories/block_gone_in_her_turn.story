# A block told to be gone while she stands there is the one she carries

"Block's gone, walks all right" names no foot, and one foot of hers carries a block: it came off on a
day nobody knows. What is said next is of no foot again. With two blocks it is asked which is gone.

## given
visit 2026-10-13
today all four
404 lame LH
LH outside sole ulcer middle; block on inside
rest fine
405 lame LH
LH outside sole ulcer middle; block on inside
RH outside white line abscess heel; block on inside
rest fine
done

## said
visit 2026-10-27
today all four
404
block's gone, walks all right
nothing found
done
405
block's gone, walks all right
RH
LH block still on
rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 404: LH: block on since 13 Oct, 14 days
saved 404
refused line 7: no foot is named for what was done; say the foot first: "LH block came off", "RH block came off"
mark 405: taken as: RH block's gone, walks all right
saved 405

## recorded
404 | LH nothing_found; block_came_off | fine LF RF RH | walks sound
405 | LH not called; block_still_on | RH not called; block_came_off | fine LF RF | walks sound
