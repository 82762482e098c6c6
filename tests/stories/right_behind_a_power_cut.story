# What is said right behind a line means the same when the battery died between

## said
visit 2026-10-27
today hinds
410 LH DD raw
rest fine
done

## the battery dies

## said
no, RH

## the battery dies

## said
no, 401
411 DD

## the battery dies

## said
LH
rest fine
done
12 heifers, all good

## the battery dies

## said
no, 11
306 wrap off

## the battery dies

## said
no, 401
## answered
told: today's feet: LH RH
mark 410: place not called (left hind digital dermatitis)
saved 410
saved 410
saved 401
refused line 2: no foot is named for digital dermatitis; say the foot first: LF, RF, LH, RH
mark 411: still in the crush: 411 DD
mark 411: taken as: 411 LH DD
mark 411: place, stage not called (left hind digital dermatitis)
saved 411
saved 12 heifers
told 12 heifers: LH RH lifted, 12 with nothing found
saved 11 heifers
told 11 heifers: LH RH lifted, 11 with nothing found
refused line 2: No cow of this herd carries the number 306.
question 401: No wrap is known on her. Was it another cow?

## recorded
401 | RH DD raw | fine LH
411 | LH DD | fine RH

## counted
11 heifers: both hind feet lifted, nothing found on 11

## ended
place_not_called 401: Right hind, digital dermatitis: where?
place_not_called 411: Left hind, digital dermatitis: where?
stage_not_called 411: Left hind, digital dermatitis: at which stage?
news_unclear 401: "306 wrap off; no, 401": No wrap is known on her. Was it another cow?
