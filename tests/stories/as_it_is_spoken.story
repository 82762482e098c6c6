# As it is spoken beside the crush, one cow a line

Nobody dictates codes. Each of these lines is said the way it comes, of a cow with the past that makes
sense of it, and leaves what was meant on record.

## given
visit 2026-10-13
today all four
205 lame RH
RH DD raw behind; wrap on, off 5d
rest fine
206 lame LH
LH outside sole ulcer middle; block on inside
rest fine
207 lame LH
LH outside sole ulcer middle, plain
rest fine
213 lame RH
RH outside claw missing
rest fine
done

## said
visit 2026-10-27
today all four
four-twelve, left hind, outside, white line abscess, block inside, see her in four weeks
rest's fine
203
just the backs, bit of slurry heel on both, nothing much
204
right hind, raw digi at the back, spray, wrap, him off with it Thursday
rest's fine
205
there's still a wrap on her, off with it, it stinks
RH vet
rest's fine
206
block's gone, walks all right
rest's fine
207
LH same as last time
rest's fine
208
both hinds, outsides, bruised, slight
209
left hind sole ulcer
no, other left, right hind I meant
rest's fine
no tag, brown heifer, white star
nothing found
513 or 531, can't read it
nothing found
211 LH SU
she's going down, let her out
213
stump's healed, square up the other one
rest's fine
215
blew up above the claw on one side, leave it for the vet; and I nicked her other back, bit of blood at the toe
LH
LH outside swelling
rest's fine
done

## answered
told: today's feet: LF RF LH RH
mark 412: place, degree not called (left hind white line abscess)
saved 412
saved 203
saved 204
mark 205: RH: wrap on since 13 Oct, 14 days, 9 late
ask 205: It stinks (right hind): dead tissue? Vet? (answer: RH vet / go ahead)
saved 205
mark 206: LH: block on since 13 Oct, 14 days
saved 206
mark 207: LH outside sole ulcer middle of the sole, plain (13 Oct)
saved 207
mark 208: place not called (both hinds sole haemorrhage)
saved 208
mark 209: claw, place, degree not called (left hind sole ulcer)
mark 209: claw, place, degree not called (right hind sole ulcer)
saved 209
saved brown heifer, white star
saved 513 or 531
mark 211: claw, place, degree not called (left hind sole ulcer)
saved 211
mark 213: RH claw missing outside (known since 13 Oct)
saved 213
refused line 35: no foot is named for swelling; say the foot first: LF, RF, LH, RH
mark 215: taken as: LH blew up above the claw on one side, leave it for the vet; and I nicked her other back, bit of blood at the toe
mark 215: place, degree not called (left hind swelling)
mark 215: claw not called (right hind blood drawn)
ask 215: Swollen on one side (left hind): above which claw? (answer: LH outside swelling / LH inside swelling)
saved 215

## recorded
412 | LH outside WLA; block_on inside; see_again for 2026-11-24 | fine LF RF RH
203 | LH HHE slight | RH HHE slight | not lifted LF RF
204 | RH DD behind raw; spray; wrap_on for 2026-10-29 | fine LF RF LH
205 | RH not called; wrap_off; vet | fine LF RF LH
206 | LH nothing_found; block_came_off | fine LF RF RH | walks sound
207 | LH outside SU same as last time sole_middle plain | fine LF RF RH
208 | LH outside SH slight | RH outside SH slight
209 | RH SU | fine LF RF LH
brown heifer, white star | fine LF RF LH RH
513 or 531 | fine LF RF LH RH
211 | LH SU | unfinished: she's going down, let her out
213 | RH nothing_found; trimmed | fine LF RF LH
215 | LH outside SW on one side; vet | RH blood_drawn toe slight | fine LF RF

## due 2026-10-27
due 205: look at right hind again (the vet is asked for first) (farmer, by 2026-10-23)
due 213: watch her walk, ring if still lame (farmer, by 2026-10-27)
due 205: vet to see right hind, farmer rings (vet, by 2026-10-27)
due 215: vet to see left hind, farmer rings (vet, by 2026-10-27)
due 204: wrap off right hind (farmer, by 2026-10-29)
coming 207: look at left hind, ring if no better (farmer, by 2026-11-04)
coming 209: look at right hind, ring if no better (farmer, by 2026-11-04)
coming 211: look at left hind, ring if no better (farmer, by 2026-11-04)
coming 412: block still on? left hind, inside claw (farmer, by 2026-11-04)
coming 204: look at the sore on right hind (farmer, by 2026-11-06)
coming 207: see again left hind (trimmer, by 2026-11-24)
coming 209: see again right hind (trimmer, by 2026-11-24)
coming 211: see again left hind (trimmer, by 2026-11-24)
coming 412: block check left hind, inside claw (trimmer, by 2026-11-24)
coming 412: see again left hind (trimmer, by 2026-11-24)
coming 412: block off left hind, inside claw (trimmer, by 2026-12-01)

## cow 205
case: DD RH, found 1x
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH: nothing found
2026-10-27 RH: wrap taken off; vet asked for
2026-10-13 LF: nothing found
2026-10-13 RF: nothing found
2026-10-13 LH: nothing found
2026-10-13 RH (lame): digital dermatitis, raw, behind (DD); wrap on, off by Sun 18 Oct

## cow 213
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH: nothing found
2026-10-27 RH: nothing found; outside claw missing
2026-10-13 LF: nothing found
2026-10-13 RF: nothing found
2026-10-13 LH: nothing found
2026-10-13 RH (lame): outside claw missing
