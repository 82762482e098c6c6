# What can mean one thing only is taken without its foot, and a number in doubt closes nothing

A block refitted or of which nobody knows is the one that is known; "both blocks off" is of the two
feet that carry one; "no, 4/5" behind a score is the score; a claw before a block that has its own is
of the lesion. News of a number nobody is sure of is asked about, and what stands beside it is told.

## given
visit 2026-10-13
today hinds
103 LH SU outside; block inside
rest fine
840 LH SU outside; block inside
RH SU outside; block inside
566 RH SU outside; block inside
rest fine
102 LH DD raw; wrap on
rest fine
104 LH DD raw; wrap on
rest fine
412 LH DD raw; wrap on
rest fine
done

## said
visit 2026-10-27
today hinds
103 block refitted; rest fine
done
840 recheck; both blocks off
rest fine
done
566 routine; block don't know; rest fine
done
109 LH SU outside block inside; lame LH 3/5
rest fine
110 nothing found
109 no, 4/5
102? wrap off
412 wrap off; 104? wrap off
104 wrap off
done

## answered
told: today's feet: LH RH
mark 103: LH: block on since 13 Oct, 14 days
saved 103
mark 840: LH: block on since 13 Oct, 14 days
mark 840: RH: block on since 13 Oct, 14 days
saved 840
mark 566: RH: block on since 13 Oct, 14 days
saved 566
mark 109: place, degree not called (left hind sole ulcer)
saved 109
saved 109
told 109: now reads: 109 lame LH; mobility 4 of 5; rest fine / LH outside sole ulcer; block on inside / RH nothing found
refused line 13: Nobody is sure of the number 102, so nothing is told of her yet. Once it is sure: "102 wrap off".
refused line 14: Nobody is sure of the number 104, so nothing is told of her yet. Once it is sure: "104 wrap off".
told 412: closed: wrap off left hind
told 104: closed: wrap off left hind
saved 110

## recorded
103 | LH not called; block_refitted | fine RH
840 recheck | LH nothing_found; block_off | RH nothing_found; block_off
566 routine | RH nothing_found; block_unknown | fine LH
109 lame LH | LH outside SU; block_on inside | fine RH
110 | fine LH RH

## ended
lifted_not_called 103: Left hind: what was found?
place_not_called 109: Left hind, sole ulcer: where?
degree_not_called 109: Left hind, sole ulcer: how bad?
news_unclear 102: "102? wrap off": Nobody was sure of the number. Was it 102?
due_not_seen 102: wrap off left hind is due and she was not seen
