# "Same as last time" is what was found then, shown and in her record with these words

Said behind the foot, or of the cow when one foot had something last time. Nothing that was done then
is taken over. It is asked of a cow with two such feet, refused where nothing is known, and a third
visit asks for the vet. "Better" and "worse" stay with the finding.

## given
visit 2026-10-01
today all four
501 lame LH
LH outside sole ulcer middle, plain; block on inside
rest fine
502 lame LH
LH outside bruise middle, slight
RH DD raw behind; spray
rest fine
503 nothing found
done

visit 2026-10-13
today all four
501 recheck
LH same as last time; block still on
rest fine
done

## said
visit 2026-10-27
today all four
501 recheck; LH same as last time; block still on
LH vet
rest fine
502 same as last time
LH outside bruise middle, worse
RH same as last time
rest fine
503 LH same as last time
rest fine
504 same as last time
504 LH sole ulcer outside, same
rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 501: LH outside sole ulcer middle of the sole "same as last time", plain (13 Oct)
ask 501: Third visit or more with the sole ulcer (left hind outside): vet? (answer: LH vet / go ahead)
refused line 5: more than one foot had something last time: LH outside bruise middle of the sole, slight (1 Oct), RH DD raw behind (1 Oct) say the foot first: "LH same as last time", "RH same as last time"
saved 501
mark 502: LH outside bruise middle of the sole, slight (1 Oct)
mark 502: degree not called (left hind sole haemorrhage)
mark 502: RH DD raw behind (1 Oct)
saved 502
mark 503: LH nothing found (1 Oct)
refused line 11: nothing is known of her from an earlier visit; say the foot and what is found: "LH sole ulcer"
saved 503
mark 504: LH: nothing is known of it from an earlier visit
mark 504: place, degree not called (left hind sole ulcer)
saved 504

## recorded
501 recheck | LH outside SU same as last time sole_middle plain; block_still_on; vet | fine LF RF RH
502 | LH outside SH worse sole_middle | RH DD same as last time behind raw | fine LF RF
503 | fine LF RF LH RH
504 | LH outside SU same | fine LF RF RH
