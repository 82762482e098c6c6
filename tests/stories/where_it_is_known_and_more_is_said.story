# "Wrap off" and "block still on" are of the foot that carries one, also where more is said behind

It can mean one thing where that foot is named next. Where another foot is named next it is asked.

## given
visit 2026-10-01
today all four
89 RH DD raw behind; wrap on, off 4d
rest fine
87 RH SU outside heel bad; block on inside, off 28d
rest fine
86 RH DD raw behind; wrap on, off 4d
rest fine
done

## said
visit 2026-10-13
today all four
89 wrap off; RH DD chronic behind
rest fine
87 recheck, block still on, RH SU outside heel slight better
rest fine
86 wrap off; LH DD chronic behind
never mind
86 RH wrap off; LH DD chronic behind
RH fine
rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 89: RH: wrap on since 1 Oct, 12 days, 8 late
saved 89
mark 87: RH: block on since 1 Oct, 12 days
mark 87: RH outside sole ulcer heel, bad (1 Oct)
refused line 6: no foot is named for what was done; say the foot first: "RH wrap taken off"
saved 87
mark 86: "86 wrap off; LH DD chronic behind" is dropped
saved 86
