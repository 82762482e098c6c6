# A cow that went down is a stop, also when that is why she was let out

Behind a comma it would be lost among the words of why she was not finished; that line is refused.

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
refused line 4: part of these words could be a call of its own; it is unclear where they end; put ; behind the words that describe, or put them in quotes
stop 412: Went down in the crush: free her and cut no more today. Vet. (answer: vet / go ahead)
saved 412
