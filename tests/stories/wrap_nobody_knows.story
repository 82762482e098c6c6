# A wrap nobody can tell of stays in the closing list

She is let out without an answer: the record says so, and the question comes again when the visit
is ended.

## given
visit 2026-10-13
today all four
350 lame RH
RH DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
today all four
350 recheck
RH DD chronic behind
rest fine
351 routine; nothing found
done

## answered

## ended

## due 2026-10-27
