# "Lame right front and I can't find a thing" is said of that leg

Why she came and what was found there are both on record, and the check speaks up.

## said
visit 2026-10-27
today all four
412 lame right front and I can't find a thing
vet
rest fine
done

## answered
told: today's feet: LF RF LH RH
stop 412: Came lame right front, nothing found: look again, look higher, or vet. (answer: RF vet / go ahead)
saved 412

## recorded
412 lame RF | RF nothing_found; vet | fine LF LH RH
