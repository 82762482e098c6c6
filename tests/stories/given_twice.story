# The same file given twice is recorded once

## from a file
visit 2026-10-27
today all four
caller Anneke
412 lame LH
LH outside white line abscess heel, bad; opened; block on inside
rest fine
no number, brown heifer
nothing found
no number, brown heifer
nothing found
413 nothing found
done

## answered
told: today's feet: LF RF LH RH
told: caller Anneke
saved 412
saved brown heifer
saved brown heifer
saved 413

## the same file again

## answered
told: caller Anneke
there already 412
there already brown heifer
there already brown heifer
there already 413

## turns
412: 1
413: 1
no number: 2
