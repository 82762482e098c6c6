# A wrap or block that is still on and that nobody knew of is asked about

Somebody else put it on. No day is made up for it, and no task.

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
LH wrap still on; nothing found
RH nothing found
done

## answered
told: today's feet: LH RH
question 513: No wrap is known on her. Since when is it on?
saved 412

## ended
news_unclear 513: "513 wrap still on": No wrap is known on her. Since when is it on?
on_since_when 412: Wrap still on left hind, and nobody knew of it: since when is it on?

## due 2026-10-27
