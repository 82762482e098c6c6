# A file that leans on her past is recorded once, given as often as one likes

Given again, her wrap is off already, and by the same words it is the same one.

## given
visit 2026-10-13
today all four
412 lame RH
RH DD raw behind; wrap on, off 5d
rest fine
413 lame LH
LH outside sole ulcer middle, plain
rest fine
done

## from a file
visit 2026-10-27
today all four
412 there's still a wrap on her, off with it; rest fine
413 same as last time; rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 412: RH: wrap on since 13 Oct, 14 days, 9 late
saved 412
mark 413: LH outside sole ulcer middle of the sole, plain (13 Oct)
saved 413

## the same file again

## answered
there already 412
there already 413

## recorded
412 | RH not called; wrap_off | fine LF RF LH
413 | LH outside SU same as last time sole_middle plain | fine LF RF RH
