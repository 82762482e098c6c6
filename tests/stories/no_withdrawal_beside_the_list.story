# "No withdrawal" beside what the list states is said at once to be less than that

The list never gets shorter by what is told, and no page says that there is none.

## products
strongmix, labelled yes, milk 7d, meat 28d, label

## said
visit 2026-10-27
today hinds
98 LH DD raw behind; spray with strongmix; no withdrawal
rest fine
done

## answered
told: today's feet: LH RH
mark 98: no withdrawal told, the list states milk till 3 Nov evening and meat till 24 Nov: the list holds
saved 98

## milk and meat
98  Last milk held back: Tue 3 Nov evening.
Last day meat held back: Tue 24 Nov.
Spray (strongmix), time as its label states.
Nobody said that she is marked.
The farm keeps milk and meat back as the label or the vet states it, and takes
the marks off afterwards.

## cow 98
case: DD LH, found 1x
2026-10-27 LH: digital dermatitis, raw, behind (DD); spray (strongmix)
2026-10-27 RH: nothing found

## ended
