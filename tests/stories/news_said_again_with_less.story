# News that was refused is said again cow by cow, and what was left out of it stays asked about

## given
visit 2026-10-20
today hinds
300 LH DD raw; wrap
rest fine
301 RH SU heel outside, bad; block inside
rest fine
305 LH DD raw
rest fine
done

## said
visit 2026-10-27
today hinds
300 wrap off, still lame; 301 blok gone
300 wrap off; 301 block gone
305 still lame; 302 sld
305 still lame
12 heifers, far shedd yard, all goood bar 606
12 heifers, far shed yard, all good

## answered
told: today's feet: LH RH
refused line 2: "blok gone" is not understood; expected news of the cow, something done, a foot or a number; did you mean "block gone"?
told 300: closed: wrap off left hind
told 301: closed: block check right hind, inside claw; block off right hind, inside claw; block still on? right hind, inside claw; to do: ring trimmer: block lost early, right hind
refused line 4: "sld" is not understood; expected news of the cow, something done, a foot or a number; did you mean "sold"?
told 305: closed: look at the sore on left hind; to do: still lame, look at her feet
refused line 6: the line ends too early; still needed: what became of them: all good or all trimmed
saved 12 heifers
told 12 heifers: far shed yard, LH RH lifted, 12 with nothing found

## ended
news_unclear 12 heifers: "12 heifers, far shedd yard, all goood bar 606": This count was not understood. How many were they, and what was found?
news_unclear 300: "300 wrap off, still lame; 301 blok gone": This was not understood. What was told?
news_unclear 302: "305 still lame; 302 sld": This was not understood. What was told?
due_not_seen 305: still lame, look at her feet: told today, and she was not seen
