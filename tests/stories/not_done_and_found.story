# What is found behind "not done" is refused, as "not done" is behind what was found

## said
visit 2026-10-27
today hinds
410 not done
LH DD raw behind
rest fine
done
410 LH DD raw behind
rest fine
done
411 not done, ran out of time; LH block still on
done

## answered
told: today's feet: LH RH
refused line 3: she was said not to be done; if she was done after all, say "done", then her number and what holds
refused line 4: she was said not to be done; if she was done after all, say "done", then her number and what holds
mark 410: "LH DD raw behind", "rest fine" were not understood, nor said again
saved 410
saved 410
saved 411

## recorded
410 | LH DD behind raw | fine RH
411 | LH not called; block_still_on | not_done: ran out of time

## ended
not_done 411: She was not done: ran out of time
lifted_not_called 411: Left hind: what was found?
on_since_when 411: Block still on left hind, and nobody knew of it: since when is it on?
