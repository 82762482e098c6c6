# "No, lame LH" puts the leg right, while she stands there and when she is out

The leg that was said is the wrong one: it is not lame beside the right one. Where the foot was mended
and the leg was not, what is asked offers that.

## said
visit 2026-10-27
today hinds
17 lame RH
RH outside WLA heel bad; opened
no, left hind
rest fine
no, lame LH
18 lame RH
LH SU outside heel bad; block on inside
RH fine
go ahead
done
19 nothing found
18 no, lame LH
29? lame RH
LH DD chronic behind
RH fine
go ahead
20 nothing found
29? no, lame LH
21 nothing found
29? no, not lame LH
done

## answered
told: today's feet: LH RH
saved 17
stop 18: Came lame right hind, nothing found: look again, look higher, or vet. (answer: RH vet / no, lame LH / go ahead)
saved 18
saved 18
told 18: now reads: 18 lame LH / LH outside sole ulcer heel, bad; block on inside / RH nothing found
saved 19
stop 29?: Came lame right hind, nothing found: look again, look higher, or vet. (answer: RH vet / no, lame LH / go ahead)
saved 29?
saved 29?
told 29?: now reads: 29? lame LH / LH DD chronic behind / RH nothing found
saved 20
saved 29?
told 29?: now reads: 29? / LH DD chronic behind / RH nothing found
saved 21
