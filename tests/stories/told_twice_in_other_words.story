# What came off today and is told once more is no question about another cow

## given
visit 2026-10-06
today all four
88 routine
both hinds DD M2 behind; wrap on
rest fine
done

## said
visit 2026-10-20
today hinds
88 wraps off
88 wraps off both hinds
88 wrap off RF

## answered
told: today's feet: LH RH
told 88: closed: wrap off left hind; wrap off right hind
told 88: noted; nothing of hers was waiting for it
question 88: No wrap is known on her right front. Was it another cow?

## ended
news_unclear 88: "88 wrap off RF": No wrap is known on her right front. Was it another cow?
