# In news the foot may stand behind a comma or an "and"

## given
visit 2026-10-13
today all four
303 LH DD raw behind; wrap on; RH DD raw behind; wrap on
rest fine
306 LF SU outside heel bad; vet
rest fine
done
done

## said
visit 2026-10-27
today all four
305 nothing found
303 wrap off LH and RH, still lame RH
306 vet came, LF
done

## answered
told: today's feet: LF RF LH RH
told 303: closed: wrap off left hind; wrap off right hind
told 303: closed: look at the sore on right hind; to do: still lame, look at right hind
told 306: closed: vet to see left front, farmer rings
saved 305

## recorded
305 | fine LF RF LH RH
