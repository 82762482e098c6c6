# A finding right behind news of another cow may be of either of the two

Nothing is taken down of her in the crush before it is said whose it is. What tells of no finding and
nothing done goes on with her in the crush, and so does what comes later.

## given
visit 2026-10-20
today hinds
200 LH outside SU heel, bad; block on inside
rest fine
203 nothing found
done

## said
visit 2026-10-27
today hinds
203 lame LH
LH SU outside
RH fine
200 block off
LH SU outside better
200 LH SU outside better
rest fine
done
204 LH outside SU heel, bad; block on inside
200 still lame
RH DD raw
204 RH DD raw
rest fine
205 LH outside bruise
200 looked at
rest fine
RH DD chronic
206 LH DD chronic
206 still lame
RH DD chronic
207 LH DD chronic
200 sold
RH DD chronic
RH DD chronic
done

## answered
told: today's feet: LH RH
mark 203: place, degree not called (left hind sole ulcer)
told 200: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
refused line 6: The line before told of 200, so it is not clear whose this is. Of her in the crush: "203 LH SU outside better"; of 200: "200 LH SU outside better".
saved 203
mark 200: LH outside sole ulcer heel, bad (20 Oct)
mark 200: place, degree not called (left hind sole ulcer)
saved 200
told 200: to do: still lame, look at her feet
refused line 12: The line before told of 200, so it is not clear whose this is. Of her in the crush: "204 RH DD raw"; of 200: "200 RH DD raw".
mark 204: place not called (right hind digital dermatitis)
saved 204
mark 205: place, degree not called (left hind sole haemorrhage)
told 200: noted; nothing of hers was waiting for it
mark 205: right hind was fine a line before. Not hers? "nothing after all", then the right number
mark 205: place not called (right hind digital dermatitis)
saved 205
mark 206: place not called (left hind digital dermatitis)
told 206: to do: still lame, look at her feet
mark 206: place not called (right hind digital dermatitis)
saved 206
mark 207: place not called (left hind digital dermatitis)
told 200: closed: look at left hind, ring if no better; see again left hind; still lame, look at her feet
refused line 24: The line before told of 200, so it is not clear whose this is. Of her in the crush: "207 RH DD chronic"; of 200: "200 RH DD chronic".
mark 207: place not called (right hind digital dermatitis)
saved 207

## ended
place_not_called 200: Left hind, sole ulcer: where?
place_not_called 203: Left hind, sole ulcer: where?
place_not_called 204: Right hind, digital dermatitis: where?
place_not_called 205: Left hind, sole haemorrhage: where?
place_not_called 205: Right hind, digital dermatitis: where?
place_not_called 206: Both hinds, digital dermatitis: where?
place_not_called 207: Both hinds, digital dermatitis: where?
degree_not_called 200: Left hind, sole ulcer: how bad?
degree_not_called 203: Left hind, sole ulcer: how bad?
degree_not_called 205: Left hind, sole haemorrhage: how bad?

## recorded
203 lame LH | LH outside SU | fine RH
200 | LH outside SU better | fine RH
204 | LH outside SU heel bad; block_on inside | RH DD raw
205 | LH outside SH | RH DD chronic
206 | LH DD chronic | RH DD chronic
207 | LH DD chronic | RH DD chronic
