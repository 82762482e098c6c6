# A measure no claw has is refused, and said again it settles the line

## said
visit 2026-10-27
today hinds
412 LH outside bruise middle, slight; sole 60 mm
LH outside bruise middle, slight; sole 6 mm
rest fine
413 nothing found; milk withheld 400 days
413 nothing found; milk withheld 40 days
done

## answered
told: today's feet: LH RH
refused line 2: no sole thickness is 60 mm; it lies between 1 mm and 25 mm; was 6 mm meant?
refused line 5: nothing is withheld for 400 days; it lies within 180; was 40d meant?
saved 412
saved 413

## ended
