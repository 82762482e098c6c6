# What is asked at the close is answered by calling her again, and is asked no more

The first words stay in the log; one turn holds what both calls say. What contradicts stays "called
twice".

## from a file
visit 2026-10-27
today hinds
299 LH outside sole ulcer; block on inside
rest fine
300 LH
done
301 recheck
302 lame LH
LH DD
303
304 LH outside bruise middle, slight
rest fine
done

## ended
unfinished 301: Her turn was not finished: nothing was said
unfinished 303: Her turn was not finished: nothing was said
lifted_not_called 300: Left hind: what was found?
lifted_not_called 300: Right hind: not lifted, or what was found?
lifted_not_called 302: Right hind: not lifted, or what was found?
place_not_called 299: Left hind, sole ulcer: where?
place_not_called 302: Left hind, digital dermatitis: where?
degree_not_called 299: Left hind, sole ulcer: how bad?
stage_not_called 302: Left hind, digital dermatitis: at which stage?

## from a file
299 LH outside sole ulcer middle, bad
300 LH nothing found
301 nothing found
302 LH DD raw behind
302 rest fine
303 rest fine
done
304 LH inside bruise middle, slight
done

## ended
called_twice 304: Left hind was called twice in this visit. Do both calls hold?
lifted_not_called 300: Right hind: not lifted, or what was found?

## recorded
304 | LH outside SH sole_middle slight | fine RH
299 | LH outside SU sole_middle bad; block_on inside | fine RH
300 | fine LH
301 recheck | fine LH RH
302 lame LH | LH DD behind raw | fine RH
303 | fine LH RH
304 | LH inside SH sole_middle slight

## due 2026-10-27
coming 299: block still on? left hind, inside claw (farmer, by 2026-11-04)
coming 302: look at the sore on left hind (farmer, by 2026-11-06)
coming 299: block check left hind, inside claw (trimmer, by 2026-11-24)
coming 299: block off left hind, inside claw (trimmer, by 2026-12-01)

## the same file again

## recorded
304 | LH outside SH sole_middle slight | fine RH
299 | LH outside SU sole_middle bad; block_on inside | fine RH
300 | fine LH
301 recheck | fine LH RH
302 lame LH | LH DD behind raw | fine RH
303 | fine LH RH
304 | LH inside SH sole_middle slight

## ended
called_twice 304: Left hind was called twice in this visit. Do both calls hold?
lifted_not_called 300: Right hind: not lifted, or what was found?
