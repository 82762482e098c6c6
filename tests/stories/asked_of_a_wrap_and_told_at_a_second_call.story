# What was asked of a wrap is told at a second call, whatever else is called twice then

## given
visit 2026-10-06
today all four
412 RH DD raw; wrap on, off 3d; rest fine
done

## said
visit 2026-10-27
today all four
412 LF DD raw; rest fine
513 all good
412 LH bruise; RH wrap off
620 all good
done

## answered
told: today's feet: LF RF LH RH
mark 412: place not called (left front digital dermatitis)
ask 412: Wrap on right hind since 6 Oct (21 d): still on? (answer: RH wrap still on / RH wrap came off by itself / RH wrap taken off / RH wrap don't know)
saved 412
saved 513
mark 412: claw, place, degree not called (left hind sole haemorrhage)
saved 412
saved 412
saved 620

## recorded
513 | fine LF RF LH RH
412 | LH SH | RH not called; wrap_off
412 | LF DD raw | fine RF LH RH
620 | fine LF RF LH RH

## ended
called_twice 412: Left hind was called twice in this visit. Do both calls hold?
lifted_not_called 412: Right hind: what was found?
place_not_called 412: Left hind, sole haemorrhage: where, and on which claw?
place_not_called 412: Left front, digital dermatitis: where?
degree_not_called 412: Left hind, sole haemorrhage: how bad?
