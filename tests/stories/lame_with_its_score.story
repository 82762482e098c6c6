# "Lame RF 3/5" is how she walks, and on which leg

## said
visit 2026-10-27
today all four
310 lame RF 3/5
RF white line abscess outside heel, bad; block inside; loose horn off
rest fine
311 lame 2 of 3 LH
LH sole ulcer outside middle, bad; block inside
rest fine
312 lame LH 2
lame LH 2 of 3
LH sole ulcer outside middle, bad; block inside
rest fine
313 lame 28d
lame
nothing found
vet
done

## answered
told: today's feet: LF RF LH RH
saved 310
refused line 8: on which scale is lame 2? say "mobility 2 of 3" (0-3) or "mobility 2 of 5" (1-5)
saved 311
refused line 12: "28d" tells a time, and not what is to happen then; say such as "see again 28d", or "off 28d" behind a wrap or block that is put on
saved 312
mark 313: "313 lame 28d" was not understood, nor said again
saved 313

## recorded
310 lame RF | RF outside WLA white_line_heel bad; block_on inside; loose_horn_off | fine LF LH RH
311 lame LH | LH outside SU sole_middle bad; block_on inside | fine LF RF RH
312 lame LH | LH outside SU sole_middle bad; block_on inside | fine LF RF RH
313 lame | fine LF RF LH RH | cow: vet | unfinished: "313 lame 28d" was not understood
