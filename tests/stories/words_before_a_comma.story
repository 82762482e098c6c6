# The words of a cow without a number end before the comma, also where the line is refused

## said
visit 2026-10-27
today hinds

## from a file
no number, white face, lame RH
no number, white face; lame RH
RH SU outside heel bad
rest fine
done

## answered
told: today's feet: LH RH
refused line 1: part of these words could be a call of its own; it is unclear where they end; put ; behind the words that describe, or put them in quotes
saved white face

## turns
no number: 1

## recorded
white face lame RH | RH outside SU heel bad | fine LH

## ended
unnumbered white face: Which number has she: white face?
