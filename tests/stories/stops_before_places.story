# What hurts her is asked before what was left out of the record

A Stop nobody answered stands before an Ask nobody answered, and both before places and degrees
that were not called.

## given
visit 2026-10-13
34 RH DD raw behind; wrap on
done

## from a file
visit 2026-10-27
today all four
299 LH sole ulcer
done
34 nothing found
done
407 LH outside sole ulcer, middle, bad; block on outside
done

## ended
unanswered 407: Block on the claw with the sole ulcer (left hind outside). Inside meant?
unanswered 34: Wrap on right hind since 13 Oct (14 d): still on?
lifted_not_called 299: Left front, right front and right hind: not lifted, or what was found?
lifted_not_called 407: Left front, right front and right hind: not lifted, or what was found?
place_not_called 299: Left hind, sole ulcer: where, and on which claw?
degree_not_called 299: Left hind, sole ulcer: how bad?
