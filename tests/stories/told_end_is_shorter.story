# A shorter end told by mouth is said to be shorter, and every page tells the later one

The list never gets shorter by what is told. Who reads her page and who reads the box hold her milk
back until the same milking.

## products
painstop, labelled yes, milk 5d, meat 15d, label

## said
visit 2026-10-27
today hinds
98 LH DD raw behind; injected with painstop by the vet
rest fine; milk held back 3 days
done

## answered
told: today's feet: LH RH
mark 98: milk told till 30 Oct evening, the list states 1 Nov evening: the later holds
saved 98

## milk and meat
98  Last milk held back: Sun 1 Nov evening.
Last day meat held back: Wed 11 Nov.
Injected (vet) (painstop), time as its label states.
Nobody said that she is marked.
The farm keeps milk and meat back as the label or the vet states it, and takes
the marks off afterwards.

## recorded
98 | LH DD behind raw | fine RH | cow: injected painstop; milk_withheld for 2026-10-30

## ended
