# A time alone is no answer where the withdrawal of two medicines is asked for

## said
visit 2026-10-27
today hinds
98 LH DD raw behind; spray with oldmix; injected with newstuff by the vet
2d
withdrawal 4d
rest fine
99 LH DD raw behind; spray with oldmix by the farmer
rest fine
100 LH DD raw behind; injected with otherstuff by the vet
2d
rest fine
done

## answered
told: today's feet: LH RH
ask 98: Not on the herd's list: oldmix. What withdrawal? (answer: no withdrawal / go ahead)
ask 98: Not on the herd's list: newstuff. What withdrawal? (answer: no withdrawal / go ahead)
refused line 3: It is asked of more than one medicine, and not clear of which that is. The longest of all, for milk and meat: "withdrawal 2d".
saved 98
saved 99
ask 100: Not on the herd's list: otherstuff. What withdrawal? (answer: no withdrawal / go ahead)
mark 100: taken as: withdrawal 2d (milk and meat; of the milk alone: milk withheld 2d)
saved 100

## recorded
98 | LH DD behind raw; spray oldmix | fine RH | cow: injected newstuff; withheld for 2026-10-31
99 | LH DD behind raw; spray oldmix | fine RH
100 | LH DD behind raw | fine RH | cow: injected otherstuff; withheld for 2026-10-29

## ended
