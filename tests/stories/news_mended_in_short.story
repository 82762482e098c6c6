# News is mended right behind it, or by her number and what was wrong

The foot alone, or what became of it without saying of what, is the rest of what was told.

## given
visit 2026-10-06
today all four
412 RH DD raw; wrap on, off 3d; rest fine
413 RH DD raw; wrap on, off 3d; rest fine
620 LH DD raw; rest fine
621 LH DD raw; rest fine
done

## said
visit 2026-10-27
today all four
412 wrap off
no, wrap still on
413 wrap off
413 no, still on
620 still lame LH
no, RH
621 still lame LH
621 no, RH
513 all good
done

## answered
told: today's feet: LF RF LH RH
told 412: closed: wrap off right hind
told 412: taken back: 412 wrap off
told 412: noted
told 413: closed: wrap off right hind
told 413: taken back: 413 wrap off
told 413: noted
told 620: closed: look at the sore on left hind; to do: still lame, look at left hind
told 620: taken back: 620 still lame LH
told 620: to do: still lame, look at right hind
told 621: closed: look at the sore on left hind; to do: still lame, look at left hind
told 621: taken back: 621 still lame LH
told 621: to do: still lame, look at right hind
saved 513

## due 2026-10-27
overdue 412: wrap off right hind (farmer, by 2026-10-09)
overdue 413: wrap off right hind (farmer, by 2026-10-09)
overdue 412: look at the sore on right hind (farmer, by 2026-10-16)
overdue 413: look at the sore on right hind (farmer, by 2026-10-16)
overdue 620: look at the sore on left hind (farmer, by 2026-10-16)
overdue 621: look at the sore on left hind (farmer, by 2026-10-16)
due 620: still lame, look at right hind (trimmer, by 2026-10-27)
due 621: still lame, look at right hind (trimmer, by 2026-10-27)

## ended
due_not_seen 412: wrap off right hind is due and she was not seen
due_not_seen 413: wrap off right hind is due and she was not seen
due_not_seen 620: still lame, look at right hind: told today, and she was not seen
due_not_seen 621: still lame, look at right hind: told today, and she was not seen
