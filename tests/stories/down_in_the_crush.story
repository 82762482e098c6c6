# A cow that went down is a stop, also when that is why she was let out

Behind a comma it is why she was not finished, and a stop all the same; said again it is one stop.

## said
visit 2026-10-27
today hinds
412 dry off
LH trimmed
unfinished, went down in the crush
unfinished; went down in the crush
vet
done

## answered
told: today's feet: LH RH
stop 412: Went down in the crush: free her and cut no more today. Vet. (answer: vet / go ahead)
saved 412
