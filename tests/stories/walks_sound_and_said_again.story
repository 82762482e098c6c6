# Still lame and walks sound at one visit: said once more the later holds, and the first is taken back

What else was told in the words of the first holds. Once it is taken back its look is no longer to
be done; the other way round she is to be looked at.

## given
visit 2026-10-20
today hinds
227 LH DD raw; wrap on, off 3d; rest fine
228 rest fine
229 rest fine
230 rest fine
done

## said
visit 2026-10-27
today hinds
228 still lame
228 walks sound
228 walks sound
news 229 walks sound
229 still lame
229 still lame
news 230 walks sound
230 still lame
news 230 walks sound
227 wrap off, still lame
227 walks sound
227 walks sound
413 nothing found
done

## answered
told: today's feet: LH RH
told 228: to do: still lame, look at her feet
question 228: Told before at this visit: "228 still lame". Which holds? Say this again if it does.
told 228: taken back: 228 still lame
told 228: noted
told 229: noted
question 229: Told before at this visit: "news 229 walks sound". Which holds? Say this again if it does.
told 229: taken back: news 229 walks sound
told 229: noted; she is to be looked at already
told 230: noted
question 230: Told before at this visit: "news 230 walks sound". Which holds? Say this again if it does.
told 230: taken back: 230 still lame
told 230: noted
told 227: closed: wrap off left hind
told 227: closed: look at the sore on left hind; to do: still lame, look at her feet
question 227: Told before at this visit: "227 wrap off, still lame". Which holds? Say this again if it does.
told 227: taken back: 227 wrap off, still lame
told 227: closed: wrap off left hind
told 227: noted
saved 413

## ended
due_not_seen 229: still lame, look at her feet: told today, and she was not seen

## due 2026-10-27
due 229: still lame, look at her feet (trimmer, by 2026-10-27)
due 227: look at the sore on left hind (farmer, by 2026-10-30)
