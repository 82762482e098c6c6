# Who was due and was not seen is listed at the end

## given
visit 2026-09-29
today all four
118 lame LH
LH outside sole ulcer middle, bad; block on inside
rest fine
119 lame RH
RH DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
today all four
430 nothing found
done

## answered
told: today's feet: LF RF LH RH
saved 430

## ended
due_not_seen 118: block check left hind, inside claw is due and she was not seen
due_not_seen 118: block off left hind, inside claw is due and she was not seen
due_not_seen 119: wrap off right hind is due and she was not seen
