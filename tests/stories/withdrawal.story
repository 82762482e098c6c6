# A product without withdrawal is used in silence; the farmer reads until when milk is held back

Two days of milk are four milkings: the end is told by date and milking, and stands in the due list
first. A product that is not on the list is asked about once, stays open until the end, and is
settled when the list has it and she is called again. What is stated later moves no end.

## products
plainmix, labelled yes, milk 0, meat 0, label
slowmix, labelled yes, milk 2d, meat 5d, vet

## said
visit 2026-10-27
today hinds
412 LH DD raw behind; spray with plainmix
rest fine
done
513 marked with paint; RH DD raw behind; spray with slowmix; wrap on
rest fine
done
614 LH DD raw behind; spray with greenmix
rest fine
done
done
615 LH DD raw behind; spray with greenmix
rest fine
done

## answered
told: today's feet: LH RH
saved 412
saved 513
ask 614: Not on the herd's list: greenmix. What withdrawal? (answer: no withdrawal / go ahead)
ask 614: Not on the herd's list: greenmix. What withdrawal? (answer: no withdrawal / go ahead)
saved 614
saved 615

## milk and meat
513  Last milk held back: Thu 29 Oct evening; marked with paint.
Last day meat held back: Sun 1 Nov; marked with paint.
Spray (slowmix), time as the vet states.
The farm keeps milk and meat back as the label or the vet states it, and takes
the marks off afterwards.
MILK AND MEAT: ASK FIRST
614 and 615  Spray (greenmix).
No withdrawal time was recorded. The label and the vet say how long; make sure
before milk or meat is sold.

## due 2026-10-28
due 513: last milk held back: Thu 29 Oct evening; marked with paint (farmer, by 2026-10-29)
due 513: last day meat held back: Sun 1 Nov; marked with paint (farmer, by 2026-11-01)
coming 513: wrap off right hind (farmer, by 2026-11-01)
coming 412: look at the sore on left hind (farmer, by 2026-11-06)
coming 513: look at the sore on right hind (farmer, by 2026-11-06)
coming 614: look at the sore on left hind (farmer, by 2026-11-06)
coming 615: look at the sore on left hind (farmer, by 2026-11-06)

## ended
unanswered 614: Not on the herd's list: greenmix. What withdrawal?

## products
greenmix, labelled yes, milk 1 milking, meat 0, label
slowmix, labelled yes, milk 9d, meat 9d, vet

## said
614
done

## ended

## milk and meat
513  Last milk held back: Thu 29 Oct evening; marked with paint.
Last day meat held back: Sun 1 Nov; marked with paint.
Spray (slowmix), time as the vet states.
614  Last milk held back: Wed 28 Oct morning.
Spray (greenmix), time as its label states.
Nobody said that she is marked.
The farm keeps milk and meat back as the label or the vet states it, and takes
the marks off afterwards.
MILK AND MEAT: ASK FIRST
615  Spray (greenmix).
No withdrawal time was recorded. The label and the vet say how long; make sure
before milk or meat is sold.
