# All that tells something of a cow may be of either, right behind news of another

Her score, her leg, what was not found, a note and what was trimmed are asked about as a finding is.
"Rest fine" and "done" are of her in the crush.

## given
visit 2026-10-06
today hinds
102 LH DD raw; wrap on, off 5d; rest fine
done
103 LH DD raw; wrap on, off 5d; rest fine
done

## said
visit 2026-10-27
today hinds
260 LH SU outside heel, slight
102 still lame
mobility 3 of 3
260 mobility 3 of 3
103 still lame
lame LH 3 of 3
260 lame LH 3 of 3
102 looked at
walks sound
never mind
102 looked at
recheck
260 recheck
102 looked at
note foot smells bad
260 LH note foot smells bad
102 looked at
trimmed
260 LH trimmed
102 looked at
rest fine
done
261 RH SU outside heel, slight
102 wrap off
LH nothing found
261 LH nothing found
103 wrap off
done

## answered
told: today's feet: LH RH
told 102: closed: look at the sore on left hind; to do: still lame, look at her feet
refused line 4: The line before told of 102, so it is not clear whose this is. Of her in the crush: "260 mobility 3 of 3"; of 102: "102 mobility 3 of 3".
told 103: closed: look at the sore on left hind; to do: still lame, look at her feet
refused line 7: The line before told of 103, so it is not clear whose this is. Of her in the crush: "260 lame LH 3 of 3"; of 103: "103 lame LH 3 of 3".
told 102: closed: still lame, look at her feet
refused line 10: The line before told of 102, so it is not clear whose this is. Of her in the crush: "260 walks sound"; of 102: "102 walks sound".
mark 260: "walks sound" is dropped
there already 102
refused line 13: The line before told of 102, so it is not clear whose this is. Of her in the crush: "260 recheck"; of 102: "102 recheck".
there already 102
refused line 16: The line before told of 102, so it is not clear whose this is. Of her in the crush: "260 LH note foot smells bad"; of 102: "102 note foot smells bad", and the foot before it.
ask 260: It stinks (left hind): dead tissue? Vet? (answer: LH vet / go ahead)
there already 102
refused line 19: The line before told of 102, so it is not clear whose this is. Of her in the crush: "260 LH trimmed"; of 102: "102 trimmed", and the foot before it.
there already 102
ask 260: Walks 3 of 3: straw, or near the parlour, and a look within a week? (answer: go ahead)
ask 260: It stinks (left hind): dead tissue? Vet? (answer: LH vet / go ahead)
ask 260: Walks 3 of 3: straw, or near the parlour, and a look within a week? (answer: go ahead)
saved 260
told 102: closed: wrap off left hind
refused line 26: The line before told of 102, so it is not clear whose this is. Of her in the crush: "261 LH nothing found"; of 102: "102 LH nothing found".
told 103: closed: wrap off left hind
saved 261

## recorded
260 lame LH | LH outside SU heel slight; trimmed | fine RH
261 | RH outside SU heel slight | fine LH

## ended
unanswered 260: It stinks (left hind): dead tissue? Vet?
unanswered 260: Walks 3 of 3: straw, or near the parlour, and a look within a week?
due_not_seen 103: still lame, look at her feet: told today, and she was not seen
