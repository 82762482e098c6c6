# Two cows in one line are kept with either until each is called on a line of her own

## said
visit 2026-10-27
today hinds
203 LH SU, 204 RH SU
203 LH SU
rest fine
done
205 RH fine and 206 LH fine
205 RH fine
LH fine
done

## answered
told: today's feet: LH RH
refused line 2: "204" begins another cow in the middle of the line; each cow on a line of her own: say 204 on the next one
mark 203: claw, place, degree not called (left hind sole ulcer)
saved 203
refused line 6: "206" begins another cow in the middle of the line; each cow on a line of her own: say 206 on the next one
saved 205

## recorded
203 | LH SU | fine RH
205 | fine LH RH

## ended
place_not_called 203: Left hind, sole ulcer: where, and on which claw?
degree_not_called 203: Left hind, sole ulcer: how bad?
news_unclear 204: "203 LH SU, 204 RH SU": It stood in one line with another cow, and nothing of it was taken down. What holds?
news_unclear 206: "205 RH fine and 206 LH fine": It stood in one line with another cow, and nothing of it was taken down. What holds?
