# A correction of another cow that is not understood leaves the cow in the crush where she is

What follows is said of her that stands there, not of the one that was to be mended, and the
correction is asked about at the end unless it is said again.

## said
visit 2026-10-27
today hinds
412 LH outside SU middle bad
rest fine
413 nothing found
414 lame RH
412 no, not so bad
412 LH no, slihgt
RH DD raw behind
412 no, slight
rest fine
done

## answered
told: today's feet: LH RH
saved 412
saved 413
refused line 6: "so" is not understood; leave it out
refused line 7: "slihgt" is not understood; expected a foot, a claw, a number, a stage, a degree or a place; did you mean "slight"?
saved 412
told 412: now reads: 412 rest fine / LH outside sole ulcer middle of the sole, slight / RH nothing found
saved 414

## recorded
413 | fine LH RH
412 | LH outside SU sole_middle slight | fine RH
414 lame RH | RH DD behind raw | fine LH

## ended
news_unclear 412: "412 no, not so bad": It was not understood, so nothing of hers was mended. What holds?
