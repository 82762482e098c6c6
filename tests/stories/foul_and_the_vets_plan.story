# Foul goes to the vet or by the vet's plan today, and is left open to the air

## said
visit 2026-10-27
today all four
412 lame RH
RH foul between, bad; wrap on, off Sat
RH by the vet's plan
go ahead
rest fine
done

## answered
told: today's feet: LF RF LH RH
stop 412: Foul (right hind): look for a stick; vet, or the vet's plan, today. (answer: RH vet / RH by the vet's plan / go ahead)
ask 412: Foul under a wrap (right hind): better left open to the air? (answer: go ahead)
saved 412

## recorded
412 lame RH | RH IP between bad; wrap_on for 2026-10-31; vet_plan | fine LF RF LH

## ended
