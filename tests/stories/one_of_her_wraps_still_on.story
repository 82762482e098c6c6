# Of several wraps that were told off one is still on: the others stay off

Said with the foot and what it is, or with the foot alone, before or behind the "no".

## given
visit 2026-10-06
today all four
224 LH DD raw; wrap on, off 3d; RH DD raw; wrap on, off 3d; rest fine
225 LH DD raw; wrap on, off 3d; RH DD raw; wrap on, off 3d; rest fine
226 LH DD raw; wrap on, off 3d; RH DD raw; wrap on, off 3d; rest fine
227 LH outside SU; block inside; RH outside SU; block inside; rest fine
229 LH DD raw; wrap on, off 3d; RH DD raw; wrap on, off 3d; rest fine
105 LH DD raw; wrap on, off 3d; rest fine
106 LH DD raw; wrap on, off 3d; RH DD raw; wrap on, off 3d; RF DD raw; wrap on, off 3d; rest fine
done

## said
visit 2026-10-27
today all four
224 wraps off
224 no, RH wrap still on
225 wraps off
225 no, RH still on
226 wraps off
226 LH no, still on
227 blocks off
no, RH still on
229 wraps off
229 no, RH still on
229 no, LH still on
105 wrap off, still lame
105 no, still on
106 wrap off
106 no, RH wrap still on, kicks
513 all good
done

## answered
told: today's feet: LF RF LH RH
told 224: closed: wrap off left hind; wrap off right hind
told 224: taken back: 224 wraps off
told 224: closed: wrap off left hind
told 224: noted
told 225: closed: wrap off left hind; wrap off right hind
told 225: taken back: 225 wraps off
told 225: closed: wrap off left hind
told 225: noted
told 226: closed: wrap off left hind; wrap off right hind
told 226: taken back: 226 wraps off
told 226: closed: wrap off right hind
told 226: noted
told 227: closed: block check left hind, inside claw; block check right hind, inside claw; block off left hind, inside claw; block off right hind, inside claw; block still on? left hind, inside claw; block still on? right hind, inside claw
told 227: taken back: 227 blocks off
told 227: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
told 227: closed: block still on? right hind, inside claw
told 229: closed: wrap off left hind; wrap off right hind
told 229: taken back: 229 wraps off
told 229: closed: wrap off left hind
told 229: noted
told 229: taken back: 229 wraps off; 229 no, RH still on
told 229: noted
told 105: closed: wrap off left hind
told 105: closed: look at the sore on left hind; to do: still lame, look at her feet
told 105: taken back: 105 wrap off, still lame
told 105: closed: look at the sore on left hind; to do: still lame, look at her feet
told 105: noted
question 106: Which wrap: right front or left hind or right hind?
told 106: taken back: 106 wrap off
question 106: Which wrap: right front or left hind or right hind?
told 106: noted
told 106: noted
saved 513

## due 2026-10-27
overdue 105: wrap off left hind (farmer, by 2026-10-09)
overdue 106: wrap off left hind (farmer, by 2026-10-09)
overdue 106: wrap off right front (farmer, by 2026-10-09)
overdue 106: wrap off right hind (farmer, by 2026-10-09)
overdue 224: wrap off right hind (farmer, by 2026-10-09)
overdue 225: wrap off right hind (farmer, by 2026-10-09)
overdue 226: wrap off left hind (farmer, by 2026-10-09)
overdue 229: wrap off left hind (farmer, by 2026-10-09)
overdue 229: wrap off right hind (farmer, by 2026-10-09)
overdue 106: look at the sore on left hind (farmer, by 2026-10-16)
overdue 106: look at the sore on right front (farmer, by 2026-10-16)
overdue 106: look at the sore on right hind (farmer, by 2026-10-16)
overdue 224: look at the sore on left hind (farmer, by 2026-10-16)
overdue 224: look at the sore on right hind (farmer, by 2026-10-16)
overdue 225: look at the sore on left hind (farmer, by 2026-10-16)
overdue 225: look at the sore on right hind (farmer, by 2026-10-16)
overdue 226: look at the sore on left hind (farmer, by 2026-10-16)
overdue 226: look at the sore on right hind (farmer, by 2026-10-16)
overdue 229: look at the sore on left hind (farmer, by 2026-10-16)
overdue 229: look at the sore on right hind (farmer, by 2026-10-16)
due 105: still lame, look at her feet (trimmer, by 2026-10-27)
due 227: block check right hind, inside claw (trimmer, by 2026-11-03)
coming 227: block off right hind, inside claw (trimmer, by 2026-11-10)
