# News nobody could read is asked of the cows it names, and of nobody else

A line that begins with "news" calls no cow; nor is what begins with another number, and tells what
became of her, of the one in the crush.

## given
visit 2026-10-20
today hinds
301 LH DD raw behind; wrap on; rest fine
302 LH outside SU heel bad; block on inside; rest fine
303 LH DD raw behind; wrap on; rest fine
306 lame LH; LH outside SU heel; rest fine
312 rest fine
313 LH DD raw behind; wrap on; rest fine
317 LH DD raw behind; wrap on; rest fine
done

## said
visit 2026-10-27
today hinds
309 rest fine
done
news 301, 303 wraps off; 302 block gnoe; 306 still lame LH
310 LH DD raw behind
312 gone, no, sold
313 wrap off; no, 317 wrap off
310 rest fine
done
news 301, 303 wraps off
news 302 block gone
306 still lame LH
317 wrap off
312 sold

## answered
told: today's feet: LH RH
saved 309
refused line 4: "block gnoe" is not understood; expected news of the cow, something done, a foot or a number; did you mean "block gone"?
refused line 4: "block" is done to a cow in the crush; start a line with her number alone, then name the foot
refused line 6: "no" cannot stand here; expected a foot, a number, news of the cow or something done
refused line 7: no foot is named for what was done; no wrap is known on her; was it another cow? Else say the foot first: LF, RF, LH, RH
saved 310
told 301: closed: wrap off left hind
told 303: closed: wrap off left hind
told 302: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw; to do: ring trimmer: block lost early, left hind
told 306: closed: look at left hind, ring if no better; to do: still lame, look at left hind
told 317: closed: wrap off left hind
told 312: kept as gone

## turns
309: 1
310: 1

## ended
news_unclear 302: "news 301, 303 wraps off; 302 block gnoe; 306 still lame LH": This was not understood. What was told?
news_unclear 306: "news 301, 303 wraps off; 302 block gnoe; 306 still lame LH": This was not understood. What was told?
news_unclear 312: "312 gone, no, sold": This was not understood. What was told?
news_unclear 313: "313 wrap off; no, 317 wrap off": This was not understood. What was told?
due_not_seen 306: still lame, look at left hind: told today, and she was not seen
due_not_seen 313: wrap off left hind is due and she was not seen
