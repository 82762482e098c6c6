# The number of news put right a second time is told of as the first time

Each time it is said what became of it: of whom it is taken back, and of whom it is told. The first
number said once more brings back what was told first.

## given
visit 2026-10-01
today all four
301 RH DD raw behind; wrap on, off 4d
rest fine
304 RH DD raw behind; wrap on, off 4d
rest fine
305 RH DD raw behind; wrap on, off 4d
rest fine
311 RH DD raw behind; wrap on, off 4d
rest fine
done

## said
visit 2026-10-13
today all four
305 wrap off
no, 304
no, 301
311 wrap off
311 no, 313
313 no, 311
304 wrap off
no, 315
no, 305

## answered
told: today's feet: LF RF LH RH
told 305: closed: wrap off right hind
told 305: taken back: 305 wrap off
told 304: closed: wrap off right hind
told 304: taken back: 305 wrap off; no, 304
told 301: closed: wrap off right hind
told 311: closed: wrap off right hind
told 311: taken back: 311 wrap off
refused line 6: No cow of this herd carries the number 313. Did you mean 311?
told 311: closed: wrap off right hind
told 304: closed: wrap off right hind
told 304: taken back: 304 wrap off
refused line 9: No cow of this herd carries the number 315. Did you mean 305 or 311?
told 305: closed: wrap off right hind

## ended
due_not_seen 304: wrap off right hind is due and she was not seen
