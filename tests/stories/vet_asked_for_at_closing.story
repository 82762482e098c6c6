# Whether the vet came is asked when the visit closes, though she was seen

No turn crosses the vet off: nothing found today does not tell whether the vet was there.

## given
visit 2026-09-29
today all four
828 RH swelling in front, bad; vet
rest fine
829 LH swelling in front, bad; vet
rest fine
830 LF swelling in front, bad; vet
rest fine
done

## said
visit 2026-10-27
today all four
828 nothing found
829 vet came
829 nothing found
done

## answered
told: today's feet: LF RF LH RH
told 829: closed: vet to see left hind, farmer rings
saved 828
saved 829

## ended
due_not_seen 828: vet to see right hind, farmer rings, since 29 Sep: did the vet come?
due_not_seen 830: vet to see left front, farmer rings is due and she was not seen

## due 2026-10-27
overdue 828: vet to see right hind, farmer rings (vet, by 2026-09-29)
overdue 830: vet to see left front, farmer rings (vet, by 2026-09-29)
