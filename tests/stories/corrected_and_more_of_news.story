# A correction of news that says more is refused whole

Nothing of it is taken, nobody comes into the crush, and what was told stays as it was.

## given
visit 2026-10-13
today hinds
202 RH DD raw behind; wrap on
203 both hinds DD raw behind; wrap on
207 LH DD raw behind; wrap on
210 recheck; rest fine
213 RH SU outside middle bad; block on inside
214 RH SU outside middle bad; block on inside
217 RH DD raw behind; wrap on
220 lame LH; rest fine
done

## said
visit 2026-10-27
today hinds
202 wrap off
202 no, 203 LH wrap off
202 no, 203; LH wrap off
202 no, 217 RH wrap off
202 no, still on; 203 LH wrap off
202 no, 217?
202 no, 217 or 207
202 no, no wrap taken off
news 203 LH wrap off
213 block off
213 no, still on, 214 block off
210 gone
210 no, 217 LH SU
210 still here
104? wrap off
104? no, 202
203 no, no wrap taken off
news 203 LH wrap off; still lame
203 no, RH
220 still lame LH
220 LH no, RH

## answered
told: today's feet: LH RH
told 202: closed: wrap off right hind
refused line 3: That puts right what was told of 202 and tells of another cow, so nothing of it is taken. Say each by itself: "202 no, no wrap taken off" and "203 LH wrap off".
refused line 4: That puts right what was told of 202 and tells of another cow, so nothing of it is taken. Say each by itself: "202 no, no wrap taken off" and "203; LH wrap off".
refused line 5: That puts right what was told of 202 and tells of another cow, so nothing of it is taken. Say each by itself: "202 no, no wrap taken off" and "217 RH wrap off".
refused line 6: That puts right what was told of 202 and tells of another cow, so nothing of it is taken. Say each by itself: "202 no, still on" and "203 LH wrap off".
refused line 7: Nobody is sure of the number, so nothing that was told is put right. Once it is sure: "202 no, 217".
refused line 8: Nobody is sure of the number, so nothing that was told is put right. Once it is sure: "202 no, 217".
told 202: taken back: 202 wrap off
told 203: closed: wrap off left hind
told 213: closed: block check right hind, inside claw; block off right hind, inside claw; block still on? right hind, inside claw
refused line 12: That puts right what was told of 213 and tells of another cow, so nothing of it is taken. Say each by itself: "213 no, still on" and "214 block off".
told 210: kept as gone
refused line 14: That puts right what was told of 210 and tells of another cow, so nothing of it is taken. Say each by itself: "210 still here" and "217 LH SU".
told 210: taken back: 210 gone
refused line 16: Nobody is sure of the number 104, so nothing is told of her yet. Once it is sure: "104 wrap off".
refused line 17: Nobody is sure of the number, so nothing that was told is put right. Once it is sure: "104 no, 202".
told 203: taken back: news 203 LH wrap off
told 203: closed: wrap off left hind
told 203: closed: look at the sore on left hind; to do: still lame, look at left hind
refused line 20: Of 203 several things were told of one foot, and which of them is put right is not said. Say which: "203 no, RH wrap taken off" or "203 no, RH still lame".
told 220: closed: watch her walk, ring if still lame; to do: still lame, look at left hind
refused line 22: It is unclear what was told of that foot of 220, so nothing is put right. If it was told of the wrong foot: "220 no, RH".

## turns

## ended
news_unclear 104: "104? wrap off": Nobody was sure of the number. Was it 104?
news_unclear 104: "104? no, 202": Nobody is sure of the number, so nothing that was told is put right. What holds?
news_unclear 202: "202 no, 203; LH wrap off": That puts right what was told of 202 and tells of another cow, so nothing of it is taken. What holds?
news_unclear 202: "202 no, still on; 203 LH wrap off": That puts right what was told of 202 and tells of another cow, so nothing of it is taken. What holds?
news_unclear 203: "202 no, 203; LH wrap off": That puts right what was told of 202 and tells of another cow, so nothing of it is taken. What holds?
news_unclear 203: "203 no, RH": Of 203 several things were told of one foot, and which of them is put right is not said. What holds?
news_unclear 210: "210 no, 217 LH SU": That puts right what was told of 210 and tells of another cow, so nothing of it is taken. What holds?
news_unclear 213: "213 no, still on, 214 block off": That puts right what was told of 213 and tells of another cow, so nothing of it is taken. What holds?
news_unclear 214: "213 no, still on, 214 block off": That puts right what was told of 213 and tells of another cow, so nothing of it is taken. What holds?
news_unclear 217: "202 no, 217 RH wrap off": That puts right what was told of 202 and tells of another cow, so nothing of it is taken. What holds?
news_unclear 217: "210 no, 217 LH SU": That puts right what was told of 210 and tells of another cow, so nothing of it is taken. What holds?
news_unclear 220: "220 LH no, RH": It is unclear what was told of that foot of 220, so nothing is put right. What holds?
due_not_seen 202: wrap off right hind is due and she was not seen
due_not_seen 203: wrap off right hind is due and she was not seen
due_not_seen 203: still lame, look at left hind: told today, and she was not seen
due_not_seen 207: wrap off left hind is due and she was not seen
due_not_seen 217: wrap off right hind is due and she was not seen
due_not_seen 220: still lame, look at left hind: told today, and she was not seen
still_on 214: block on right hind inside since 13 Oct: still on?
