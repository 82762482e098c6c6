# What came in together is answered together, and each warning is given once

Typed, "done" with a warning open gives it once more, for she still stands there. In a file nobody
stands there to read it twice.

## from a file
visit 2026-10-27
today all four
215 lame RF
RF nothing found
rest fine
done
216 nothing found
done

## answered
told: today's feet: LF RF LH RH
stop 215: Came lame right front, nothing found: look again, look higher, or vet. (answer: RF vet / go ahead)
saved 215
saved 216

## ended
unanswered 215: Came lame right front, nothing found: look again, look higher, or vet.
