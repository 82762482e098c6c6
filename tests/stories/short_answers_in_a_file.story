# Short answers in a file are taken the same way when it is given again

## given
visit 2026-10-13
today hinds
201 RH DD raw behind; wrap on
done

## from a file
visit 2026-10-27
today hinds
201
rest fine
taken off
204 LH foul, bad; given bluemix by the vet
rest fine
2d
done

## answered
told: today's feet: LH RH
ask 201: Wrap on right hind since 13 Oct (14 d): still on? (answer: RH wrap still on / RH wrap came off by itself / RH wrap taken off / RH wrap don't know)
mark 201: taken as: RH wrap taken off
saved 201
ask 204: Not on the herd's list: bluemix. What withdrawal? (answer: no withdrawal / go ahead)
mark 204: taken as: withdrawal 2d (milk and meat; of the milk alone: milk withheld 2d)
saved 204

## the same file again

## answered
there already 201
there already 204

## recorded
201 | RH nothing_found; wrap_off | fine LH
204 | LH IP bad | fine RH | cow: given bluemix; withheld for 2026-10-29

## ended

