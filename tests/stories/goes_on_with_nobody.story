# What only goes on with a cow calls none behind a refused line, and is asked whose it is

"Rest fine", "fronts fine", "walks sound", "spray", "milk 4d" and "no, chronic" mean something of a
cow that stands there. Nobody knows whose they are behind a line that may have named another, so they
are refused with what to say, and no cow without a number is made of them. "All wraps off" names no
cow, and a medicine of the herd's list is none: what follows stays hers.

## products
painfree, labelled yes, milk 4d, meat 10d, label

## given
visit 2026-10-13
today hinds
108 RH DD raw; wrap on
rest fine
109 LH DD raw; wrap on
rest fine
done

## said
visit 2026-10-27
today hinds
109 LH SU outside heel, bad; wrap off
all wraps off
rest fine
108, 109 wraps off
done
110 LH DD raw behind; injected by the vet
painfree
milk 4d; meat 10d
injected by the vet with painfree
rest fine
done
111 LH SU outside heel, bad
now then 413
rest fine
rest fine
walks sound
spray
413 rest fine
done
112 LH SU outside heel, bad
brown heifer
fronts fine
milk 4d; meat 10d
112 fronts fine
112 milk 4d; meat 10d
done
spray

## answered
told: today's feet: LH RH
refused line 3: "all" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found
told 108: closed: wrap off right hind
told 109: closed: wrap off left hind
saved 109
ask 110: Injected: with what, and what is its withdrawal? (answer: no withdrawal / go ahead)
refused line 8: "painfree" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found; If that was given: "injected with painfree".
saved 110
refused line 14: "now then" is not understood; leave it out
refused line 15: A line before may have named another cow, so it is not clear whose this is. Of her in the crush: "111 rest fine"; of another: her number before it.
refused line 16: A line before may have named another cow, so it is not clear whose this is. Of her in the crush: "111 rest fine"; of another: her number before it.
refused line 17: A line before may have named another cow, so it is not clear whose this is. Of her in the crush: "111 walks sound"; of another: her number before it.
refused line 18: A line before may have named another cow, so it is not clear whose this is. Of her in the crush: "111 LH spray"; of another: her number before it.
mark 111: "rest fine", "walks sound", "spray" were not understood, nor said again
saved 111
saved 413
refused line 22: "brown" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found
refused line 23: A line before may have named another cow, so it is not clear whose this is. Of her in the crush: "112 fronts fine"; of another: her number before it.
refused line 24: A line before may have named another cow, so it is not clear whose this is. Of her in the crush: "112 milk 4d; meat 10d"; of another: her number before it.
mark 112: "brown heifer" was not understood, nor said again
saved 112
refused line 28: "spray" is said of a cow, and no cow is named yet; start with her number

## recorded
109 | LH outside SU heel bad; wrap_off | fine RH
110 | LH DD behind raw | fine RH | cow: injected painfree; milk_withheld for 2026-10-31; meat_withheld for 2026-11-06
111 | LH outside SU heel bad | unfinished: "rest fine", "walks sound", "spray" were not understood
413 | fine LH RH
112 | LH outside SU heel bad | fine LF RF | cow: milk_withheld for 2026-10-31; meat_withheld for 2026-11-06 | unfinished: "brown heifer" was not understood

## ended
unfinished 111: Her turn was not finished: "rest fine", "walks sound", "spray" were not understood
unfinished 112: Her turn was not finished: "brown heifer" was not understood
news_unclear spray: "spray": This was not understood. Of whom was it, and what was told?
