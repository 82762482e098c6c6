# A stop is asked again when she is let out, and "go ahead" is kept with the record

"done" with a stop nobody answered keeps her in the crush once more.

## said
visit 2026-10-27
today all four
161 lame LH
LH outside sole ulcer middle, bad; block on outside
rest fine
done
go ahead
done

## answered

## ended
