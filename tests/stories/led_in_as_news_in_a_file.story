# The same in a file, also while somebody stands in the crush

## given
visit 2026-10-20
today hinds
301 LH DD raw behind; wrap on; rest fine
302 LH outside SU heel bad; block on inside; rest fine
done

## from a file
visit 2026-10-27
today hinds
310 LH DD raw behind
news 301, 998 wraps off LH; 302 block gnoe
310 rest fine
302 LH block gnoe, gone
done

## answered
told: today's feet: LH RH
refused line 3: "block gnoe" is not understood; expected news of the cow, something done, a foot or a number; did you mean "block gone"?
refused line 3: "block" is done to a cow in the crush; start a line with her number alone, then name the foot
refused line 5: "block gnoe" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "block gone"?
refused line 5: "gone" cannot stand here; expected a foot, a claw, a lesion, nothing found, why she came or a degree; of a cow it stands behind her number: 77 gone; of a claw say "inside claw missing"
saved 310

## turns
310: 1

## ended
news_unclear 301: "news 301, 998 wraps off LH; 302 block gnoe": This was not understood. What was told?
news_unclear 302: "news 301, 998 wraps off LH; 302 block gnoe": This was not understood. What was told?
news_unclear 302: "302 LH block gnoe, gone": This was not understood. What was told?
news_unclear 998: "news 301, 998 wraps off LH; 302 block gnoe": This was not understood. What was told?
due_not_seen 301: wrap off left hind is due and she was not seen
still_on 302: block on left hind inside since 20 Oct: still on?
