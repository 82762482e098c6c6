# Two in one line are refused, and each is told by herself in other words: nothing is left to ask

## said
visit 2026-10-27
today hinds
340, 341 both fine
340 nothing found
341 nothing found
342, 343 both fine
342 nothing found
done

## answered
told: today's feet: LH RH
refused line 2: "both" cannot stand here; expected news of the cow, something done, a foot or a number
saved 340
refused line 5: "both" cannot stand here; expected news of the cow, something done, a foot or a number
saved 341
saved 342

## ended
news_unclear 343: "342, 343 both fine": This was not understood. What was told?
