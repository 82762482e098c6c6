# In a file as well a cow without a tag is never the cow before her

The same lines, typed or read from a file, leave the same on record.

## from a file
visit 2026-10-27
today hinds
412 routine
LH outside bruise middle, slight
no tag, black cow
RH outside sole ulcer middle, bad; block on inside
rest fine
413 nothing found
no tg, white cow
LH growth between, bad
rest fine
done

## answered
told: today's feet: LH RH
saved 412
saved black cow
refused line 8: "no tg" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found; did you mean "no tag"?
refused line 8: "white cow" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "whole cow"?
saved 413
saved no tg, white cow

## recorded
412 routine | LH outside SH sole_middle slight
black cow | RH outside SU sole_middle bad; block_on inside | fine LH
413 | fine LH RH
no tg, white cow | LH IH between bad | fine RH | unfinished: "no tg, white cow" was not understood

## ended
unnumbered black cow: Which number has she: black cow?
unnumbered no tg, white cow: Which number has she: no tg, white cow?
unfinished no tg, white cow: Her turn was not finished: "no tg, white cow" was not understood
lifted_not_called 412: Right hind: not lifted, or what was found?
