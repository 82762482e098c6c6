# She came lame and nothing shows: look again, look higher, or vet

## said
visit 2026-10-27
today all four
215 lame RF
RF nothing found
RF vet
rest fine
done

## answered
told: today's feet: LF RF LH RH
stop 215: Came lame right front, nothing found: look again, look higher, or vet. (answer: RF vet / go ahead)
saved 215

## due 2026-10-27
due 215: vet to see right front, farmer rings (vet, by 2026-10-27)
