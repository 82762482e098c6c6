# A line of a file that cannot be read is refused, and her turn counts as unfinished

Nothing is guessed, and nothing said after it goes to the wrong cow.

## from a file
visit 2026-10-27
today all four
412 nothing found
413 LHH sole ulcer middle, bad
RH DD raw behind
rest fine
414 nothing found
done

## answered

## cow 412

## cow 413

## ended
