# A wrap to come off on a day that was asked about stands on the list of what is due with that doubt

No wrap stays on for a month because a slip of the tongue was left unanswered. Confirmed, the day that
was said holds.

## said
visit 2026-10-20
today hinds
104 LH DD raw behind; wrap on, off 30d; rest fine
105 LH DD raw behind; wrap on, off 30d; rest fine
go ahead
106 LH DD raw behind; wrap on, off 4d; rest fine
done

## answered
told: today's feet: LH RH
ask 104: Left hind: wrap off in 30 days? A wrap comes off after 3 to 7. (answer: LH no, no wrap on; wrap on, off 5d / go ahead)
saved 104
ask 105: Left hind: wrap off in 30 days? A wrap comes off after 3 to 7. (answer: LH no, no wrap on; wrap on, off 5d / go ahead)
saved 105
saved 106

## due 2026-10-20
coming 106: wrap off left hind (farmer, by 2026-10-24)
coming 104: wrap off left hind (Thu 19 Nov was said, and nobody answered whether that is meant) (farmer, by 2026-10-27)
coming 104: look at the sore on left hind (farmer, by 2026-10-30)
coming 105: look at the sore on left hind (farmer, by 2026-10-30)
coming 106: look at the sore on left hind (farmer, by 2026-10-30)
coming 105: wrap off left hind (farmer, by 2026-11-19)
