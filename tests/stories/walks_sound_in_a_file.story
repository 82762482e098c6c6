# In a file, where what is said again is there already, "no" and what holds answers which of two does

## given
visit 2026-10-20
today hinds
228 rest fine
229 rest fine
231 rest fine
done

## from a file
visit 2026-10-27
today hinds
228 still lame
228 walks sound
228 no, walks sound
news 229 walks sound
229 still lame
231 sold
231 died
231 no, died
413 nothing found
done

## the same file again

## answered
told: today's feet: LH RH
told 228: to do: still lame, look at her feet
question 228: Told before at this visit: "228 still lame". Which holds? If this does, say "228 no, walks sound".
told 228: taken back: 228 still lame
told 228: noted
told 229: noted
question 229: Told before at this visit: "news 229 walks sound". Which holds? If this does, say "229 no, still lame".
told 231: kept as gone
question 231: Told before at this visit: "231 sold". Which holds? If this does, say "231 no, died".
told 231: taken back: 231 sold
told 231: kept as gone
saved 413
there already 228
there already 228
there already 228
there already 229
question 229: Told before at this visit: "news 229 walks sound". Which holds? If this does, say "229 no, still lame".
there already 231
there already 231
there already 231
there already 413

## due 2026-10-27
due 229: still lame, look at her feet (trimmer, by 2026-10-27)

## ended
news_unclear 229: "229 still lame": Told before at this visit: "news 229 walks sound". Which holds? If this does, say "229 no, still lame".
due_not_seen 229: still lame, look at her feet: told today, and she was not seen
