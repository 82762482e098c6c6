# A wrap nobody took off is known by the cow, not by the foot that was called

"There's still a wrap on her, off with it, it stinks": the foot is the one that carries her wrap. She
carries two, or none that anybody knew of: it is asked which, and the foot alone is the answer.

## given
visit 2026-10-13
today all four
412 lame RH
RH DD raw behind; wrap on, off 5d
rest fine
413 lame LH
both hinds DD raw behind; wrap on, off 5d
rest fine
done

## said
visit 2026-10-27
today all four
412 there's still a wrap on her, off with it, it stinks
RH vet
rest fine
413
there's still a wrap on her, off with it
LH
RH wrap taken off
rest fine
414 there's still a wrap on her, off with it
LH
rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 412: RH: wrap on since 13 Oct, 14 days, 9 late
ask 412: It stinks (right hind): dead tissue? Vet? (answer: RH vet / go ahead)
saved 412
refused line 6: she carries more than one wrap; say the foot first: "LH there's still a wrap on her", "RH there's still a wrap on her"
mark 413: taken as: LH there's still a wrap on her, off with it
refused line 10: no wrap of hers is known to be on; say the foot it is on: "LH there's still a wrap on her"
saved 413
mark 414: taken as: 414 LH there's still a wrap on her, off with it
saved 414

## recorded
412 | RH not called; wrap_off; vet | fine LF RF LH
413 | LH not called; wrap_off | RH not called; wrap_off | fine LF RF
414 | LH not called; wrap_off | fine LF RF RH
