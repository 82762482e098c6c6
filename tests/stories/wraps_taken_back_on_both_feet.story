# A wrap taken back on both feet is read back with the feet

"Scrap the wrap" behind "both wrapped" is of both: whoever meant one of them hears it at once.

## said
visit 2026-10-27
today hinds
54 LH DD raw behind, RH DD chronic behind, both wrapped, off 4d
scrap the wrap
done

## answered
told: today's feet: LH RH
mark 54: "wrap on" taken back: both hinds
saved 54
