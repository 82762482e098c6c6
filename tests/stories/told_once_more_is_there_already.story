# Told once more in the same words, it is there already

"Dead" is "died"; how she left else is asked about.

## given
visit 2026-10-20
today hinds
301 LH DD raw behind; wrap on; rest fine
302 LH outside SU heel bad; block on inside; rest fine
303 rest fine
304 lame LH; LH outside SU heel; rest fine
305 lame LH; LH outside SU heel; rest fine
306 rest fine
310 LH DD raw behind; wrap on; rest fine
311 RH DD raw behind; wrap on; rest fine
312 RH DD raw behind; wrap on; rest fine
done

## said
visit 2026-10-27
today hinds
301 wrap off
301 wrap off
302 block gone
302 block gone
303 gone
303 gone
303 sold
303 sold
304 still lame
304 still lame
news 305 walks sound
news 305 walks sound
306 died
306 dead
306 dead
310 wrap off LH, 311 wrap off RH
311 no, 312
303 culled
303 sold

## answered
told: today's feet: LH RH
told 301: closed: wrap off left hind
there already 301
told 302: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw; to do: ring trimmer: block lost early, left hind
there already 302
told 303: kept as gone
there already 303
told 303: kept as gone
there already 303
told 304: closed: look at left hind, ring if no better; to do: still lame, look at her feet
there already 304
told 305: noted
there already 305
told 306: kept as gone
there already 306
there already 306
told 310: closed: wrap off left hind
told 311: closed: wrap off right hind
told 311: taken back: 310 wrap off LH, 311 wrap off RH
told 312: closed: wrap off right hind
question 303: Told before at this visit: "303 sold". Which holds? Say this again if it does.
told 303: kept as gone

## due 2026-10-28
overdue 311: wrap off right hind (farmer, by 2026-10-25)
overdue 302: ring trimmer: block lost early, left hind (farmer, by 2026-10-27)
overdue 304: still lame, look at her feet (trimmer, by 2026-10-27)
due 305: look at left hind, ring if no better (farmer, by 2026-10-28)
due 301: look at the sore on left hind (farmer, by 2026-10-30)
due 310: look at the sore on left hind (farmer, by 2026-10-30)
due 311: look at the sore on right hind (farmer, by 2026-10-30)
due 312: look at the sore on right hind (farmer, by 2026-10-30)
coming 304: see again left hind (trimmer, by 2026-11-17)
coming 305: see again left hind (trimmer, by 2026-11-17)

## ended
due_not_seen 304: still lame, look at her feet: told today, and she was not seen
due_not_seen 311: wrap off right hind is due and she was not seen
