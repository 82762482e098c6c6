# What a refused line held and nobody said again stays asked about

A line that is said again is said again as a whole: what was known of it and is left out the second time was still
called. It may be said in several lines.

## said
visit 2026-10-27
today hinds
410 LH outside SU heell, bad; block on inside; vet
LH outside SU heel, bad; block on inside
rest fine
done
411 LH outside SU heell, bad; block on inside; vet
LH outside SU heel, bad; block on inside
vet
rest fine
done
412 RH foull; injected with painfree by the vet; milk 4d; meat 10d
RH foul; injected with painfree by the vet; meat 10d
rest fine
go ahead
done
413 DD
LH SU
rest fine
done
414 DD
LH DD raw
rest fine
done
415 pain relief; LH SU bad
LH SU bad
rest fine
done
416 pain relief; LH SU bad
pain relief asked for; LH SU bad
rest fine
done

## recorded
410 | LH outside SU heel bad; block_on inside | fine RH | unfinished: "410 LH outside SU heell, bad; block on inside; vet" was not understood
411 | LH outside SU heel bad; block_on inside; vet | fine RH
412 | RH IP | fine LH | cow: injected painfree; meat_withheld for 2026-11-06 | unfinished: "412 RH foull; injected with painfree by the vet; milk 4d; meat 10d" was not understood
413 | LH SU | RH not called | unfinished: "413 DD" was not understood
414 | LH DD raw | fine RH
415 | LH SU bad | fine RH | unfinished: "415 pain relief; LH SU bad" was not understood
416 | LH SU bad | fine RH | cow: pain_relief_asked

## ended
unfinished 410: Her turn was not finished: "410 LH outside SU heell, bad; block on inside; vet" was not understood
unfinished 412: Her turn was not finished: "412 RH foull; injected with painfree by the vet; milk 4d; meat 10d" was not understood
unfinished 413: Her turn was not finished: "413 DD" was not understood
unfinished 415: Her turn was not finished: "415 pain relief; LH SU bad" was not understood
lifted_not_called 413: Right hind: what was found?
place_not_called 413: Left hind, sole ulcer: where, and on which claw?
place_not_called 414: Left hind, digital dermatitis: where?
place_not_called 415: Left hind, sole ulcer: where, and on which claw?
place_not_called 416: Left hind, sole ulcer: where, and on which claw?
degree_not_called 412: Right hind, foul: how bad?
degree_not_called 413: Left hind, sole ulcer: how bad?
