# Lame still, not lame, walks sound: what is told both ways is asked about

With "no" the later stands for the earlier. What was told first, said again, answers as well.

## given
visit 2026-10-20
today hinds
301 lame LH; LH outside SU heel; rest fine
302 lame LH; LH outside SU heel; rest fine
303 lame LH; LH outside SU heel; rest fine
304 lame LH; LH outside SU heel; rest fine
305 lame LH; LH outside SU heel; rest fine
306 rest fine
307 LH DD raw behind; wrap on; rest fine
done

## said
visit 2026-10-27
today hinds
301 still lame
301 not lame
301 walks sound
302 still lame
302 no, walks sound
302 no, walks sound
303 still lame
303 no, not lame
304 still lame
304 walks sound
304 still lame
305 still lame
305 LH nothing found; walks sound; rest fine
done
306 died
306 no, sold
307 wrap off
307 no, wrap still on
306 no sold

## answered
told: today's feet: LH RH
told 301: closed: look at left hind, ring if no better; to do: still lame, look at her feet
question 301: Told before at this visit: "301 still lame". Which holds? Say this again if it does.
question 301: Told before at this visit: "301 still lame". Which holds? Say this again if it does.
told 302: closed: look at left hind, ring if no better; to do: still lame, look at her feet
told 302: taken back: 302 still lame
told 302: noted
there already 302
told 303: closed: look at left hind, ring if no better; to do: still lame, look at her feet
told 303: taken back: 303 still lame
told 303: noted
told 304: closed: look at left hind, ring if no better; to do: still lame, look at her feet
question 304: Told before at this visit: "304 still lame". Which holds? Say this again if it does.
told 304: taken back: 304 walks sound
told 304: noted; she is to be looked at already
told 305: closed: look at left hind, ring if no better; to do: still lame, look at her feet
saved 305
told 306: kept as gone
told 306: taken back: 306 died
told 306: kept as gone
told 307: closed: wrap off left hind
told 307: taken back: 307 wrap off
told 307: noted
told 306: taken back: 306 no, sold

## due 2026-10-28
overdue 307: wrap off left hind (farmer, by 2026-10-25)
overdue 301: still lame, look at her feet (trimmer, by 2026-10-27)
overdue 304: still lame, look at her feet (trimmer, by 2026-10-27)
due 302: look at left hind, ring if no better (farmer, by 2026-10-28)
due 303: look at left hind, ring if no better (farmer, by 2026-10-28)
due 307: look at the sore on left hind (farmer, by 2026-10-30)
coming 301: see again left hind (trimmer, by 2026-11-17)
coming 302: see again left hind (trimmer, by 2026-11-17)
coming 303: see again left hind (trimmer, by 2026-11-17)
coming 304: see again left hind (trimmer, by 2026-11-17)

## ended
news_unclear 301: "301 walks sound": Told before at this visit: "301 still lame". Which holds? Say this again if it does.
told_two_ways 305: Said to be lame still, and to walk sound. Which is right?
due_not_seen 301: still lame, look at her feet: told today, and she was not seen
due_not_seen 304: still lame, look at her feet: told today, and she was not seen
due_not_seen 307: wrap off left hind is due and she was not seen
