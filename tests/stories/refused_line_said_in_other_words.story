# A refused line is settled when its words are said as the refusal asks, and never by another foot

Known words may come in any order, and what the refusal pointed at may be said otherwise. A wrap of
another foot, or a number nobody could read, is not said again by whatever comes next.

## said
visit 2026-10-27
today all four
414 nothing found LH
414 LH nothing found
rest fine
415
not lifted fronts; hinds trimmed
415 fronts not lifted; hinds trimmed
rest fine
416 RH DD raw behind
wrap LH
LH wrap
spray twice
spray
RH rot
RH foul slight
LH inside and outside bruise
LH both claws bruise
rest fine
207 RF lame, nothing found
207 lame RF; nothing found
417 RH bruise slight outside heel
not done, ran out of time
unfinished, ran out of time
413 LH SU outside heel bad
wrp on, off Thu
RH wrap on, off Thu
rest fine
418 LH SU outside heel bad
wrp on, off Thu
LH spray
rest fine
419 RH DD raw behind
thirteen
LH bruise toe outside slight
513 LH bruise toe outside slight
420 LH SU outside heel bad
no block
never mind
rest fine
421 LH SU outside heel bad
no block
rest fine
done
421 never mind
never mind

## answered
told: today's feet: LF RF LH RH
refused line 2: is "LH" meant for what stands before it? say the foot first: LH nothing found; or put ; before LH when more is to be said of it
saved 414
refused line 6: is "fronts" meant for what stands before it? say the foot first: fronts not lifted; or put ; before fronts when more is to be said of it
saved 415
refused line 10: is "LH" meant for what stands before it? say the foot first: LH wrap; or put ; before LH when more is to be said of it
refused line 12: "twice" is not taken for the name of a product; leave it out; if it is the name, put it in quotes or say: spray with twice
refused line 14: "rot" could mean more than one thing; which is it: foul, toe necrosis, or heel horn erosion?
stop 416: Foul (right hind): look for a stick; vet, or the vet's plan, today. (answer: RH vet / RH by the vet's plan / go ahead)
refused line 16: it is unclear what belongs to which claw; say "both claws", or each claw with its own lesion
mark 416: place, degree not called (left hind sole haemorrhage)
refused line 19: the leg is said before "lame"; say: lame RF
stop 416: Foul (right hind): look for a stick; vet, or the vet's plan, today. (answer: RH vet / RH by the vet's plan / go ahead)
saved 416
stop 207: Came lame right front, nothing found: look again, look higher, or vet. (answer: RF vet / go ahead)
saved 207
refused line 22: feet were done already; say "unfinished" and why
saved 417
refused line 25: "wrp on" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found; did you mean "wrap on"?
refused line 25: nothing was said just before that could come off; say what comes off: "wrap on, off Thu", "wrap taken off"
mark 413: "wrp on, off Thu" was not understood, nor said again
saved 413
refused line 29: "wrp on" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found; did you mean "wrap on"?
refused line 29: nothing was said just before that could come off; say what comes off: "wrap on, off Thu", "wrap taken off"
mark 418: "wrp on, off Thu" was not understood, nor said again
saved 418
refused line 33: "thirteen" cannot stand here; expected a foot, a number, "no number", a claw, a lesion or nothing found; say the number of a cow in digits, or all of it as in four twelve; a time with its unit
saved 419
refused line 34: A line before may have named another cow, so it is not clear whose this is. Say her number, and this once more.
saved 513
refused line 37: "block" cannot stand here; expected a foot, a claw, a number, a stage, a degree or a place; what was not done is not said; if it was said and is wrong: "no, no block"
mark 420: "no block" is dropped
saved 420
refused line 41: "block" cannot stand here; expected a foot, a claw, a number, a stage, a degree or a place; what was not done is not said; if it was said and is wrong: "no, no block"
mark 421: "no block" was not understood, nor said again
saved 421
saved 421
mark: there is no line to drop; say her number first

## recorded
414 | fine LF RF LH RH
415 | LH nothing_found; trimmed | RH nothing_found; trimmed | not lifted LF RF
416 | LH both SH; wrap_on; spray | RH DD behind raw; IP slight | fine LF RF
207 lame RF | fine LF RF LH RH
417 | RH outside SH heel slight | unfinished: ran out of time
413 | LH outside SU heel bad | RH not called; wrap_on for 2026-10-29 | fine LF RF | unfinished: "wrp on, off Thu" was not understood
418 | LH outside SU heel bad; spray | fine LF RF RH | unfinished: "wrp on, off Thu" was not understood
419 | RH DD behind raw
513 | LH outside SH toe slight
420 | LH outside SU heel bad | fine LF RF RH
421 | LH outside SU heel bad | fine LF RF RH

## ended
unfinished 413: Her turn was not finished: "wrp on, off Thu" was not understood
unfinished 417: Her turn was not finished: ran out of time
unfinished 418: Her turn was not finished: "wrp on, off Thu" was not understood
unanswered 207: Came lame right front, nothing found: look again, look higher, or vet.
unanswered 416: Foul (right hind): look for a stick; vet, or the vet's plan, today.
lifted_not_called 413: Right hind: what was found?
lifted_not_called 419: Left front, right front and left hind: not lifted, or what was found?
lifted_not_called 513: Left front, right front and right hind: not lifted, or what was found?
place_not_called 416: Left hind, sole haemorrhage: where?
degree_not_called 416: Left hind, sole haemorrhage: how bad?
