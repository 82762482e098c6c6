# Seeing her does not tell which cow was meant

No wrap was known on her, so the news may be another cow's; that she came into the crush does not
answer it.

## given
visit 2026-10-20
today hinds
620 nothing found
done

## said
visit 2026-10-27
today hinds
620 wraps off
620 nothing found
done

## answered
told: today's feet: LH RH
question 620: No wrap is known on her. Was it another cow?
saved 620

## ended
news_unclear 620: "620 wraps off": No wrap is known on her. Was it another cow?
