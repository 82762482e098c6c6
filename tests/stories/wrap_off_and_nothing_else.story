# "201 RH wrap off" and nothing else, before the next cow, is news of her

She was not in the crush: her task is crossed off and nobody asks what was found. Said of a foot that
carries no wrap, or with more behind it, it is the turn of a cow.

## given
visit 2026-10-13
today hinds
201 RH DD raw behind; wrap on
202 RH DD raw behind; wrap on
203 RH DD raw behind; wrap on
done

## said
visit 2026-10-27
today hinds
201 RH wrap off
202 RH wrap off
RH DD chronic behind
rest fine
203 LH wrap off
204 nothing found
done

## answered
told: today's feet: LH RH
told 201: closed: wrap off right hind
mark 201: taken as news of her; if she was in the crush, say her number and what was found
saved 202
ask 203: The wrap of 13 Oct is on right hind. Right hind meant? (answer: no, RH / go ahead)
saved 203
saved 204

## recorded
202 | RH DD behind chronic; wrap_off | fine LH
203 | LH not called; wrap_off
204 | fine LH RH

## ended
unanswered 203: The wrap of 13 Oct is on right hind. Right hind meant?
lifted_not_called 203: Left hind: what was found?
lifted_not_called 203: Right hind: not lifted, or what was found?
still_on 203: wrap on right hind since 13 Oct: still on?

## due 2026-10-27
overdue 203: wrap off right hind (farmer, by 2026-10-18)
due 201: look at the sore on right hind (farmer, by 2026-10-23)
due 203: look at the sore on right hind (farmer, by 2026-10-23)
