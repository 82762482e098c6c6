# News of another cow leaves a refused line of her in the crush open

The line that nobody could read was of the cow that stands there. The same words told of another one
say nothing of it: her foot is asked about, and "rest fine" does not make it clean.

## given
visit 2026-10-20
today hinds
234 LH DD raw behind; wrap on
rest fine
235 LH outside SU heel, bad; block on inside
rest fine
236 LH DD raw behind; wrap on
rest fine
237 LH DD raw behind; wrap on
rest fine
238 nothing found
239 nothing found
no number, black cow, white foot
LH outside SU heel, bad; block on inside
rest fine
done

## said
visit 2026-10-27
today hinds
241 routine
lmae RH
news 238 still lame RH
rest fine
done
242 routine
LH wrop off
234 LH wrap off
rest fine
done
243 routine
stil lame LH
239 still lame
239 still lame LH
rest fine
done
304 routine
LH wrap stil on
236 LH wrap still on
rest fine
done
305 recheck
LH blok gone
235 LH block gone
rest fine
done
246 routine
wlks sound
news 237 walks sound
rest fine
done
407 routine
blok gone
black cow, white foot block gone
rest fine
done
248 routine
kiks
news 238 kicks
rest fine
done

## ended
unfinished 241: Her turn was not finished: "lmae RH" was not understood
unfinished 242: Her turn was not finished: "LH wrop off" was not understood
unfinished 243: Her turn was not finished: "stil lame LH", "rest fine" were not understood
unfinished 246: Her turn was not finished: "wlks sound" was not understood
unfinished 248: Her turn was not finished: "kiks" was not understood
unfinished 304: Her turn was not finished: "LH wrap stil on" was not understood
unfinished 305: Her turn was not finished: "LH blok gone" was not understood
unfinished 407: Her turn was not finished: "blok gone" was not understood
lifted_not_called 241: Right hind: what was found?
lifted_not_called 242: Left hind: what was found?
lifted_not_called 304: Left hind: what was found?
lifted_not_called 305: Left hind: what was found?
due_not_seen 236: wrap off left hind is due and she was not seen
due_not_seen 237: wrap off left hind is due and she was not seen
due_not_seen 238: still lame, look at right hind: told today, and she was not seen
due_not_seen 239: still lame, look at her feet: told today, and she was not seen
