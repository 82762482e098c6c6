# Told to be sold and then to have died: which holds is asked

How she left is kept whenever it is said: "gone" says nothing of it. Said once more it holds, for
the one who says it knows what was said before.

## given
visit 2026-10-20
today hinds
301 LH DD raw; wrap; rest fine
302 rest fine
303 rest fine
304 rest fine
done

## said
visit 2026-10-27
today hinds
301 sold
301 died
301 died
301 died
302 gone
302 sold
302 gone
303 died
303 sold
304 sold
304 sold
411 rest fine
done

## answered
told: today's feet: LH RH
told 301: closed: look at the sore on left hind; wrap off left hind
question 301: Told before at this visit: "301 sold". Which holds? Say this again if it does.
told 301: kept as gone
there already 301
told 302: kept as gone
told 302: kept as gone
there already 302
told 303: kept as gone
question 303: Told before at this visit: "303 died". Which holds? Say this again if it does.
told 304: kept as gone
there already 304
saved 411

## ended
news_unclear 303: "303 sold": Told before at this visit: "303 died". Which holds? Say this again if it does.
