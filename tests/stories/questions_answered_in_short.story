# A question about her is answered in a word or two

Whether a wrap or block is still on, and how long milk and meat are held back. Where two feet are
asked about, the foot is said.

## given
visit 2026-10-13
today hinds
201 RH DD raw behind; wrap on
202 both hinds DD raw behind; wrap on
203 LH SU outside middle bad; block on inside
done

## said
visit 2026-10-27
today hinds
201
rest fine
taken off
202
rest fine
taken off
LH wrap taken off
came off
203
rest fine
still on
204 LH foul, bad; given bluemix by the vet
rest fine
2d
205 LH foul, bad; given whitemix by the vet
rest fine
milk 8 milkings
10d
206 LH foul, bad; given greenmix by the vet
rest fine
milk withheld 96 hours; meat 28d
207 LH DD raw behind; wrap 3d
rest fine
done

## answered
told: today's feet: LH RH
ask 201: Wrap on right hind since 13 Oct (14 d): still on? (answer: RH wrap still on / RH wrap came off by itself / RH wrap taken off / RH wrap don't know)
mark 201: taken as: RH wrap taken off
saved 201
ask 202: Wrap on left hind since 13 Oct (14 d): still on? (answer: LH wrap still on / LH wrap came off by itself / LH wrap taken off / LH wrap don't know)
ask 202: Wrap on right hind since 13 Oct (14 d): still on? (answer: RH wrap still on / RH wrap came off by itself / RH wrap taken off / RH wrap don't know)
refused line 7: "taken off" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found; did you mean "take off"?
mark 202: taken as: RH wrap came off
saved 202
ask 203: Block on left hind since 13 Oct (14 d): still on? (answer: LH block still on / LH block came off / LH block taken off / LH block don't know)
mark 203: taken as: LH block still on
saved 203
ask 204: Not on the herd's list: bluemix. What withdrawal? (answer: no withdrawal / go ahead)
mark 204: taken as: withdrawal 2d (milk and meat; of the milk alone: milk withheld 2d)
saved 204
ask 205: Not on the herd's list: whitemix. What withdrawal? (answer: no withdrawal / go ahead)
ask 205: Not on the herd's list: whitemix. What meat withdrawal? (answer: go ahead)
mark 205: taken as: meat withheld 10d
saved 205
ask 206: Not on the herd's list: greenmix. What withdrawal? (answer: no withdrawal / go ahead)
saved 206
saved 207

## recorded
201 | RH nothing_found; wrap_off | fine LH
202 | LH nothing_found; wrap_off | RH nothing_found; wrap_came_off
203 | LH nothing_found; block_still_on | fine RH
204 | LH IP bad | fine RH | cow: given bluemix; withheld for 2026-10-29
205 | LH IP bad | fine RH | cow: given whitemix; milk_withheld for 2026-10-31; meat_withheld for 2026-11-06
206 | LH IP bad | fine RH | cow: given greenmix; milk_withheld for 2026-10-31; meat_withheld for 2026-11-24
207 | LH DD behind raw; wrap_on for 2026-10-30 | fine RH

## ended

