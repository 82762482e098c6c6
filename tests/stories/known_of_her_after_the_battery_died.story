# What was said with her past in mind is read the same after the battery died

The lines of a half-entered turn are read again, and her past is what it was: the block is off the same
foot, the finding is that of last time, and "rest fine" still speaks of the foot nobody named.

## given
visit 2026-10-13
today all four
404 lame LH
LH outside sole ulcer middle; block on inside
RH DD raw behind; spray
rest fine
done

## said
visit 2026-10-27
today all four
404
block's gone
RH same as last time

## the battery dies

## said
rest fine
done

## recorded
404 | LH nothing_found; block_came_off | RH DD same as last time behind raw | fine LF RF
