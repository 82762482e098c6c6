# A line that names no number and could not be read stays on record with its words

Nobody is in the crush, so there is no cow whose turn could keep it. It is asked about when the visit
closes by its first words; said again as it was meant it is settled.

## given
visit 2026-10-13
today hinds
201 RH DD raw behind; wrap on
202 LH DD raw behind; wrap on
done

## from a file
visit 2026-10-27
today hinds
all wraps off
loads of heifers all good
the little one by the gate kicks
201, 202 wraps off
no, 11 heifers
413 nothing found
done

## answered
told: today's feet: LH RH
refused line 2: "all" is not understood; expected a number, "no number", today's feet or caller or writer
refused line 3: "loads" is not understood; expected a number, "no number", today's feet or caller or writer
refused line 4: "the" is not understood; leave it out
refused line 4: "little" is not understood either
refused line 4: "by the gate" is not understood either
told 201: closed: wrap off right hind
told 202: closed: wrap off left hind
refused line 6: No animals were counted at this visit. Say the count without "no".
saved 413

## ended
news_unclear all wraps: "all wraps off": This was not understood. Of whom was it, and what was told?
news_unclear loads of heifers: "loads of heifers all good": This was not understood. Of whom was it, and what was told?
news_unclear the little one: "the little one by the gate kicks": This was not understood. Of whom was it, and what was told?
