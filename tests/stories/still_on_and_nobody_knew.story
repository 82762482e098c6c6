# A wrap or block that is still on and that nobody knew of is asked about, and stays to be seen to

Somebody else put it on. No day is made up for when that was.

## given
visit 2026-10-20
today hinds
412 nothing found
513 nothing found
done

## said
visit 2026-10-27
today hinds
513 wrap still on
412 recheck
LH block still on; nothing found
RH nothing found
done

## answered
told: today's feet: LH RH
question 513: No wrap is known on her. Since when is it on?
saved 412

## ended
news_unclear 513: "513 wrap still on": No wrap is known on her. Since when is it on?
on_since_when 412: Block still on left hind, and nobody knew of it: since when is it on?

## due 2026-10-27
due 513: ask since when a wrap is on her (farmer, by 2026-10-27)
due 412: ask since when a block is on left hind (trimmer, by 2026-10-27)

## cow 412
on her: block LH since 2026-10-27
2026-10-27 LH: nothing found; block still on
2026-10-27 RH: nothing found
2026-10-20 LH: nothing found
2026-10-20 RH: nothing found
