# News nobody could read is on record at once, for every number it names

The tablet goes dark before the visit is ended; what was told is asked about all the same.

## given
visit 2026-10-13
today hinds
88 nothing found
513 nothing found
done

## said
visit 2026-10-27
today hinds
66 wrap off
88, 513 wrps of

## the battery dies

## said
412 nothing found
done

## answered
told: today's feet: LH RH
refused line 2: No cow of this herd carries the number 66.
refused line 3: "wrps of" is not understood; expected news of the cow, something done, a foot or a number; did you mean "wraps off"?
saved 412

## ended
news_unclear 513: "88, 513 wrps of": This was not understood. What was told?
news_unclear 66: "66 wrap off": No cow of this herd carries the number 66. Which cow was it?
news_unclear 88: "88, 513 wrps of": This was not understood. What was told?
