# A block on the bad claw is stopped

A block puts her whole weight on the claw that carries it. Called on the claw with the ulcer it is
stopped at once, and one word of mouth puts it right.

## said
visit 2026-10-27
today all four
160 lame LH
LH outside sole ulcer middle, bad; block on outside
no, inside
rest fine
done

## answered

## cow 160

## due 2026-10-27
