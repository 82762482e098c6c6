# "Nothing found" and a lesion of the same foot are asked about, whichever is said first

One of them is wrong, and the foot must not become an ulcer, or sound, because nobody noticed. Said
as a correction, "no, ...", the lesion takes the place of "nothing found".

## said
visit 2026-10-27
today hinds
901 LH nothing found; SU outside heel bad
901 LH SU outside heel bad
rest fine
842 LH nothing found
LH DD raw behind
LH no, DD raw behind
rest fine
843 LH nothing found
no, SU outside heel bad
rest fine
844 LH nothing found
SU outside heel bad
never mind
rest fine
845 LH nothing found
rest fine
done
no, DD raw behind
846 nothing found
845 LH no, no DD
845 LH nothing after all
847 LH SU outside heel bad
LH nothing found
nothing after all
rest fine
done

## answered
told: today's feet: LH RH
refused line 2: sole ulcer is called on LH, of which the same line says "nothing found"; say which holds: "LH nothing found", or what was found
saved 901
refused line 6: "nothing found" was said of LH; if DD was found there after all, say "LH no, DD"; if not, say "never mind"
saved 842
saved 843
refused line 13: "nothing found" was said of LH; if sole ulcer was found there after all, say "LH no, sole ulcer"; if not, say "never mind"
mark 844: "SU outside heel bad" is dropped
saved 844
saved 845
saved 845
saved 845
told 845: now reads: 845 rest fine / LH / RH nothing found
saved 846
saved 845
refused line 24: sole ulcer was called on LH; if it was not there, say "nothing after all"; for the other feet "rest fine"
saved 847

## recorded
901 | LH outside SU heel bad | fine RH
842 | LH DD behind raw | fine RH
843 | LH outside SU heel bad | fine RH
844 | fine LH RH
846 | fine LH RH
845 | fine LH RH
847 | fine LH RH
