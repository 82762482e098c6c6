# Told again after a new wrap was put on, "wrap off" may be of that one, and is asked about

The same told twice with nothing in between is there already.

## given
visit 2026-10-20
today hinds
412 lame LH
LH DD raw behind; wrap on
RH nothing found
done

## from a file
visit 2026-10-27
today hinds
412 wrap off LH
412 wrap off LH
412 recheck
LH DD raw behind; wrap on
RH nothing found
done
412 wrap off LH

## answered
told: today's feet: LH RH
told 412: closed: wrap off left hind
there already 412
saved 412
question 412: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.

## the same file again

## answered
there already 412
question 412: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
there already 412
question 412: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.

## ended
news_unclear 412: "412 wrap off LH": Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
