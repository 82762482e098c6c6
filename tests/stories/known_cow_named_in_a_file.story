# A file in which the right number follows the wrong one is given twice

## given
visit 2026-10-13
today hinds
231 LH DD raw behind; wrap on
done

## from a file
visit 2026-10-27
today hinds
321 recheck
231
LH wrap taken off; nothing found
rest fine
done

## answered
told: today's feet: LH RH
ask 321: 321 is new here; 231 has a wrap on left hind. 231 meant? (answer: no, 231 / go ahead)
saved 231

## the same file again

## answered
there already 231

## recorded
231 recheck | LH nothing_found; wrap_off | fine RH

## ended
