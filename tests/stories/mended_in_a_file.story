# What was mended by number in a file is not mended twice when the file is given again

## from a file
visit 2026-10-27
today hinds
412 LH DD raw behind; wrap on, off Fri
rest fine
413 nothing found
412 no, chronic
412 no, no wrap
done

## answered
told: today's feet: LH RH
saved 412
saved 412
told 412: now reads: 412 rest fine / LH DD chronic behind; wrap on, off Fri / RH nothing found
saved 412
told 412: now reads: 412 rest fine / LH DD chronic behind / RH nothing found
saved 413

## the same file again

## answered
there already 412
there already 412
there already 412
there already 413

## turns
412: 1
413: 1

## due 2026-10-27

## cow 412
case: DD LH, found 1x
2026-10-27 LH: digital dermatitis, chronic, behind (DD)
2026-10-27 RH: nothing found
