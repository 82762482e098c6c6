# "No" right after she was let out puts her turn right, and nothing later does

Once something else was said it could mean that instead; right behind news it is of the news.

## given
visit 2026-10-13
today hinds
231 LH DD raw behind; wrap on
rest fine
321 LH DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
today hinds
412 lame LH
LH outside sole ulcer middle, bad; block on inside
rest fine
done
321 wrap off
no, 231
413 LH growth between, bad
rest fine
done
no, right hind
# a note changes nothing

no, 414
LH oustide bruise
no, 415

## answered
told: today's feet: LH RH
saved 412
told 321: closed: wrap off left hind
told 321: taken back: 321 wrap off
told 231: closed: wrap off left hind
saved 413
saved 413
saved 414
refused line 13: "LH" is said of a cow, and no cow is named yet; start with her number
refused line 13: "oustide" is not understood either; did you mean "outside"?
mark 415: put right: all that was called of no number is hers

## recorded
412 lame LH | LH outside SU sole_middle bad; block_on inside | fine RH
414 | RH IH between bad | fine LH

## ended
unfinished 415: Her turn was not finished: "LH oustide bruise" was not understood
lifted_not_called 415: Left hind: what was found?
due_not_seen 321: wrap off left hind is due and she was not seen
