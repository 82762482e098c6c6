# News in the same words is news again once something else was told, or done, between

So is a line that was dropped and is said again, and a number nobody carries is settled by all that
was told of it.

## given
visit 2026-10-20
today hinds
302 LH DD raw behind; wrap on; rest fine
303 rest fine
304 rest fine
305 LH DD raw behind; wrap on; rest fine
306 rest fine
68 LH DD raw behind; wrap on; rest fine
done

## said
visit 2026-10-27
today hinds
302 wrap still on
302 wrap off
302 wrap still on
302 wrap still on
302 wrap off
news 303 kicks
news 303 no longer kicks
news 303 kicks
304 gone
304 LH DD raw behind, rest fine
done
304 gone
66 wrap off, still lame
68 still lame
67 wrap off, still lame
68 wrap off, still lame
news 306 blok lost
never mind
news 306 blok lost
305 wrap off
305 LH DD raw behind; wrap on; rest fine
done
305 wrap off
305 LH wrap off
305 LH wrap off
411 rest fine
done

## answered
told: today's feet: LH RH
told 302: noted
told 302: closed: wrap off left hind
question 302: Her wrap on left hind was said to be off at this visit. Is it off, or still on?
told 302: to do: wrap off left hind
told 302: closed: wrap off left hind
told 303: noted
told 303: noted
told 303: noted
told 304: kept as gone
question 304: 304 was said to be gone today. Is she still here?
saved 304
told 304: closed: look at the sore on left hind
refused line 14: No cow of this herd carries the number 66. Did you mean 68?
refused line 14: No cow of this herd carries the number 66. Did you mean 68?
told 68: closed: look at the sore on left hind; to do: still lame, look at her feet
refused line 16: No cow of this herd carries the number 67. Did you mean 68?
refused line 16: No cow of this herd carries the number 67. Did you mean 68?
told 68: closed: wrap off left hind
there already 68
refused line 18: "blok lost" is not understood; expected news of the cow, something done, a foot or a number; did you mean "block lost"?
mark 306: "news 306 blok lost" is dropped
refused line 20: "blok lost" is not understood; expected news of the cow, something done, a foot or a number; did you mean "block lost"?
told 305: closed: wrap off left hind
saved 305
question 305: Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.
told 305: closed: wrap off left hind
told 305: noted; nothing of hers was waiting for it
saved 411

## recorded
304 | LH DD behind raw | fine RH
305 | LH DD behind raw; wrap_on | fine RH
411 | fine LH RH

## ended
news_unclear 306: "news 306 blok lost": This was not understood. What was told?
news_unclear 66: "66 wrap off, still lame": No cow of this herd carries the number 66. Which cow was it?
due_not_seen 68: still lame, look at her feet: told today, and she was not seen
