# News of a number nobody carries is refused with the nearest one

The other cows of the line are told all the same, and at the end it is asked which cow was meant.

## given
visit 2026-10-20
today all four
412 lame RH
RH DD raw behind; wrap on
rest fine
513 lame LH
LH DD M2 behind; wrap on
rest fine
done

## said
visit 2026-10-27
412, 531 wraps off

## answered
told 412: closed: wrap off right hind
refused line 1: No cow of this herd carries the number 531. Did you mean 513?

## due 2026-10-27
due 513: wrap off left hind (farmer, by 2026-10-25)
due 412: look at the sore on right hind (farmer, by 2026-10-30)
due 513: look at the sore on left hind (farmer, by 2026-10-30)

## ended
news_unclear 531: "412, 531 wraps off": No cow of this herd carries the number 531. Which cow was it?
due_not_seen 513: wrap off left hind is due and she was not seen
