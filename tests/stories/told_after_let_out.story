# A question she left with is answered by the next line

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
350 wrap came off
done

## answered

## ended

## due 2026-10-27
