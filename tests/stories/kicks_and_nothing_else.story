# Of whom only is said how she is handled is news, and it is known before she comes

The farmer tells it when the trimmer comes, or of a cow that stands elsewhere; nothing of it is
silently a cow that was seen to. While another cow is being called it could be the next one: it is
asked.

## given
visit 2026-10-13
today hinds
412 nothing found
416 nothing found
417 nothing found
done

## said
visit 2026-10-27
today hinds
417 jumps
412 LH outside bruise middle, slight
416 kicks
news 416 kicks
rest fine
416
nothing found
416 no longer kicks
done
417 nothing found
done

## answered
told: today's feet: LH RH
told 417: noted
refused line 4: Another cow is in the crush. Is this news of 416, or is she the next one? Of one who is not in the crush say: news 416 kicks; of the next one her number alone first.
told 416: noted
saved 412
mark 416: careful: kicks
saved 416
mark 417: careful: jumps
saved 417

## turns
412: 1
416: 1
417: 1
