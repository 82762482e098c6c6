# Off, said at a second call, may be the wrap put on at the first one

The old wrap was replaced when the new one was put on. Whoever says later that it is off is asked,
as of a cow without an old wrap.

## given
visit 2026-10-06
today all four
412 RH DD raw; wrap on, off 3d; rest fine
414 RH outside SU; block on inside; rest fine
done

## said
visit 2026-10-27
today all four
412 RH DD raw; wrap on, off 3d; rest fine
413 RH DD raw; wrap on, off 3d; rest fine
414 RH block off; outside SU; block on inside; rest fine
513 all good
412 RH wrap off
412 RH wrap off
done
done
413 RH wrap off
done
done

## answered
told: today's feet: LF RF LH RH
mark 412: place not called (right hind digital dermatitis)
saved 412
mark 413: place not called (right hind digital dermatitis)
saved 413
mark 414: place, degree not called (right hind sole ulcer)
saved 414
saved 513
mark 412: place not called (right hind digital dermatitis)
ask 412: Right hind: wrap put on and off. Which holds? (answer: RH no, no wrap taken off / RH no, no wrap on / go ahead)
ask 412: Right hind: wrap put on and off. Which holds? (answer: RH no, no wrap taken off / RH no, no wrap on / go ahead)
saved 412
mark 413: place not called (right hind digital dermatitis)
ask 413: Right hind: wrap put on and off. Which holds? (answer: RH no, no wrap taken off / RH no, no wrap on / go ahead)
ask 413: Right hind: wrap put on and off. Which holds? (answer: RH no, no wrap taken off / RH no, no wrap on / go ahead)
saved 413

## recorded
414 | RH outside SU; block_off; block_on inside | fine LF RF LH
513 | fine LF RF LH RH
412 | RH DD raw; wrap_on for 2026-10-30; wrap_off | fine LF RF LH
413 | RH DD raw; wrap_on for 2026-10-30; wrap_off | fine LF RF LH

## ended
unanswered 412: Right hind: wrap put on and off. Which holds?
unanswered 413: Right hind: wrap put on and off. Which holds?
place_not_called 412: Right hind, digital dermatitis: where?
place_not_called 413: Right hind, digital dermatitis: where?
place_not_called 414: Right hind, sole ulcer: where?
degree_not_called 414: Right hind, sole ulcer: how bad?
