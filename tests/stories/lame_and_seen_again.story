# Nothing found on the lame leg but a plan for her: asked about, and no stop

## said
visit 2026-10-27
today all four
342 lame RH
RH nothing found; watch her walk in a week; told the farmer
rest fine
go ahead
done

## answered
told: today's feet: LF RF LH RH
ask 342: Came lame right hind, no cause found: compare the other leg, think higher up. (answer: RH vet / go ahead)
saved 342

## due 2026-11-03
due 342: watch her walk (farmer, by 2026-11-03)

## ended
