# A number with its unit and nothing else is not lost in a file

## from a file
visit 2026-10-27
today all four
501 RH DD raw; wrap
3d
rest fine
502 RH DD raw
28d
rest fine
503 all good
done

## answered
told: today's feet: LF RF LH RH
mark 501: place not called (right hind digital dermatitis)
mark 501: taken as: wrap on, off 3d
saved 501
mark 502: place not called (right hind digital dermatitis)
refused line 6: "28d" tells a time, and not what is to happen then; say such as "see again 28d", or "off 28d" behind a wrap or block that is put on
saved 502
saved 503

## recorded
501 | RH DD raw; wrap_on for 2026-10-30 | fine LF RF LH
502 | RH DD raw | fine LF RF LH | unfinished: "28d" was not understood
503 | fine LF RF LH RH

## ended
unfinished 502: Her turn was not finished: "28d" was not understood
place_not_called 501: Right hind, digital dermatitis: where?
place_not_called 502: Right hind, digital dermatitis: where?
