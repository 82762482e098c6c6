# A line that is refused as often as it is typed is asked about once

## said
visit 2026-10-27
today hinds
412 LH outsid sole ulcer
413 nothing found
412 LH outsid sole ulcer
413 nothing found
412 LH outsid sole ulcer
413 nothing found

## ended
unfinished 412: Her turn was not finished: "412 LH outsid sole ulcer" was not understood
lifted_not_called 412: Left hind: what was found?
