# "Wraps off" means all the wraps that are on her, "wrap off" one of them

## given
visit 2026-10-20
today hinds
412 lame LH
both hinds DD raw behind; wrap on
513 lame RH
both hinds DD raw behind; wrap on
620 lame LH
LH outside sole ulcer middle, bad; inside bruise middle, slight; block on inside
RH outside sole ulcer middle, bad; block on inside
done

## said
visit 2026-10-27
412, 620 wraps off
513 wraps off RH
620 blocks came off

## answered
told 412: closed: wrap off left hind; wrap off right hind
question 620: No wrap is known on her. Was it another cow?
told 513: closed: wrap off right hind
told 620: closed: block check left hind, inside claw; block check right hind, inside claw; block off left hind, inside claw; block off right hind, inside claw; block still on? left hind, inside claw; block still on? right hind, inside claw; to do: ring trimmer: block lost early, left hind; ring trimmer: block lost early, right hind

## due 2026-10-27
due 513: wrap off left hind (farmer, by 2026-10-25)
due 620: ring trimmer: block lost early, left hind (farmer, by 2026-10-27)
due 620: ring trimmer: block lost early, right hind (farmer, by 2026-10-27)
due 412: look at the sore on left hind (farmer, by 2026-10-30)
due 412: look at the sore on right hind (farmer, by 2026-10-30)
due 513: look at the sore on left hind (farmer, by 2026-10-30)
due 513: look at the sore on right hind (farmer, by 2026-10-30)

## ended
news_unclear 620: "412, 620 wraps off": No wrap is known on her. Was it another cow?
due_not_seen 513: wrap off left hind is due and she was not seen
