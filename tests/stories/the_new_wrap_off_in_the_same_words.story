# "LH wrap off" in the same words after a new wrap was put on is of the new one

Told of her as news it is asked about, for she came with one too.
Said right behind it in the same turn it could be the first word again, and is refused.

## given
visit 2026-10-20
today hinds
300 LH DD raw behind; wrap on; rest fine
301 LH DD raw behind; wrap on; rest fine
302 LH DD raw behind; wrap on; rest fine
done

## said
visit 2026-10-27
today hinds
300 LH wrap off
300 LH DD raw behind; wrap on; rest fine
300 LH wrap off
301 LH wrap off
done
301 LH DD raw behind; wrap on; rest fine
301 LH wrap off
done
301 LH wrap off
done
302 LH wrap off
LH DD raw behind; wrap on
LH wrap off
never mind
LH no, no wrap on
rest fine
done

## answered
told: today's feet: LH RH
saved 300
question 300: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
mark 300: taken as news of her; if she was in the crush, say her number and what was found
saved 301
saved 301
saved 301
there already 301
refused line 14: The wrap of before was told off, and a new one was put on since. Say "never mind"; and if the new one is off again: "LH no, no wrap on".
mark 302: "LH wrap off" is dropped
saved 302

## due 2026-10-28
coming 300: wrap off left hind (farmer, by 2026-11-01)
coming 300: look at the sore on left hind (farmer, by 2026-11-06)
coming 301: look at the sore on left hind (farmer, by 2026-11-06)
coming 302: look at the sore on left hind (farmer, by 2026-11-06)

## ended
lifted_not_called 301: Left hind: what was found?
news_unclear 300: "300 LH wrap off": Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
