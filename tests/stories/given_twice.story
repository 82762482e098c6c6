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

## the same file again

## answered

## turns
