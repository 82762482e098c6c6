# "Both wrapped" and "spray both" are of the two feet that were spoken of

With one foot spoken of, or three, it is refused.

## said
visit 2026-10-27
today all four
301 LH DD raw behind; RH DD raw behind; spray both
both wrapped, off Thu
rest fine
302 hinds DD raw behind
both sprayed
rest fine
303 LH DD raw behind; spray both
LH spray
rest fine
304 LF fine; LH DD raw behind; RH DD raw behind
both wrapped
hinds wrapped, off Thu
rest fine
done

## answered
told: today's feet: LF RF LH RH
saved 301
refused line 8: it is unclear which two feet are meant; say the feet first: "both hinds" or "both fronts"
saved 302
mark 303: "303 LH DD raw behind; spray both" was not understood, nor said again
saved 303
refused line 12: it is unclear which two feet are meant; say the feet first: "both hinds" or "both fronts"
saved 304

## recorded
301 | LH DD behind raw; spray; wrap_on for 2026-10-29 | RH DD behind raw; spray; wrap_on for 2026-10-29 | fine LF RF
302 | LH DD behind raw; spray | RH DD behind raw; spray | fine LF RF
303 | LH not called; spray | fine LF RF RH | unfinished: "303 LH DD raw behind; spray both" was not understood
304 | LH DD behind raw; wrap_on for 2026-10-29 | RH DD behind raw; wrap_on for 2026-10-29 | fine LF RF
