# Blood on the third foot of one caller is asked about, whatever the other one does

## said
visit 2026-10-27
today hinds
caller Anna
409 routine
LH outside drew blood at the toe
rest fine
410 routine
RH outside drew blood at the toe
rest fine
caller Silje
411 routine
LH outside drew blood at the toe
rest fine
caller Anna
412 routine
RH outside drew blood at the toe
go ahead
rest fine
done

## answered
told: today's feet: LH RH
told: caller Anna
saved 409
told: caller Silje
saved 410
told: caller Anna
saved 411
ask 412: Blood drawn on 3 feet today, one caller: leave more sole, or change hands? (answer: go ahead)
saved 412

## ended
