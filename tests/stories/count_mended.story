# A count is mended by no and the right one, never taken for the number of a cow

## said
visit 2026-10-27
today hinds
412 nothing found
12 heifers, all good
no, 11
413 nothing found
done
no, 10 heifers
12 heifers, all good bar the lame one
no, 11
LH sole ulcer outside, middle, bad; block on inside
rest fine
done

## answered
told: today's feet: LH RH
saved 412
saved 12 heifers
told 12 heifers: LH RH lifted, 12 with nothing found
saved 11 heifers
told 11 heifers: LH RH lifted, 11 with nothing found
saved 413
saved 10 heifers
told 10 heifers: LH RH lifted, 10 with nothing found
saved 12 heifers
told 12 heifers: LH RH lifted, 11 with nothing found, lame one on her own
mark lame one: call what was found on her; her number is asked for when the visit closes
refused line 9: It is unclear whether that is how many they were, or the number of the one who stands there. How many: "no, 11 heifers"; her number: call what was found on her first, then this.
saved lame one

## counted
10 heifers: both hind feet lifted, nothing found on 10
12 heifers: both hind feet lifted, nothing found on 11; called on her own: lame one
