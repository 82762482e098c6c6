# Who kicks, lies down or needs the hoist is known before she comes in again

It is told when her number is said, before anybody stands behind her, and once a visit. It holds
until somebody says that it is over; one thing that is over leaves the others. Of a file nobody
stands there any more.

## said
visit 2026-09-29
today hinds
412 lame LH
LH outside bruise, slight, middle; careful, she kicks
needs the hoist; rest fine
413 not done, she jumps
414 nothing found
done

## answered
told: today's feet: LH RH
saved 412
mark 413: kept as why; to be told so when she comes again say "jumps" on its own
saved 413
saved 414

## said
visit 2026-10-13
today hinds
412 recheck
nothing found
412 no longer kicks
413 jumps; nothing found
414 nothing found
done

## answered
told: today's feet: LH RH
mark 412: careful: kicks, needs the hoist
saved 412
saved 413
saved 414

## said
visit 2026-10-27
today hinds
412 nothing found
413 nothing found
done

## answered
told: today's feet: LH RH
mark 412: careful: needs the hoist
saved 412
mark 413: careful: jumps
saved 413
