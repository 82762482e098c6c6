# Told to walk sound and to be lame still at one visit: which holds is asked

Said once more, the later one holds. Who died after she was told to be sold is told how she left.

## given
visit 2026-10-20
today hinds
301 lame LH; LH SU outside, middle, bad; block on inside; rest fine
302 lame LH; LH SU outside, middle, bad; block on inside; rest fine
done

## said
visit 2026-10-27
today hinds
news 301 walks sound
301 still lame
301 still lame
302 still lame
news 302 walks sound
411 rest fine
done

## answered
told: today's feet: LH RH
told 301: noted
question 301: Told before at this visit: "news 301 walks sound". Which holds? Say this again if it does.
told 301: taken back: news 301 walks sound
told 301: noted; she is to be looked at already
told 302: to do: still lame, look at her feet
question 302: Told before at this visit: "302 still lame". Which holds? Say this again if it does.
saved 411

## ended
news_unclear 302: "news 302 walks sound": Told before at this visit: "302 still lame". Which holds? Say this again if it does.
due_not_seen 301: still lame, look at her feet: told today, and she was not seen
due_not_seen 302: still lame, look at her feet: told today, and she was not seen
