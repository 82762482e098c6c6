# Told off on two feet, one by one, it is asked about where none is known

Outside the crush as news, in the crush as what was done.

## given
visit 2026-10-01
today hinds
301 RH DD raw behind; wrap on, off 4d
302 RH DD raw behind; wrap on, off 4d
303 both hinds DD raw behind; wrap on, off 4d
done

## said
visit 2026-10-13
today hinds
301 RH wrap off; LH wrap off
303 RH wrap off; LH wrap off
302 recheck
RH wrap off; LH wrap off
both hinds DD chronic
done

## answered
told: today's feet: LH RH
ask 301: No wrap is known on her left hind, only on right hind. Was one there? (answer: LH no, no wrap taken off / go ahead)
told 301: closed: wrap off right hind
question 301: No wrap is known on her left hind. Was it another cow?
mark 301: taken as news of her; if she was in the crush, say her number and what was found
told 303: closed: wrap off left hind
told 303: closed: wrap off right hind
mark 303: taken as news of her; if she was in the crush, say her number and what was found
ask 302: No wrap is known on her left hind, only on right hind. Was one there? (answer: LH no, no wrap taken off / go ahead)
mark 302: place not called (both hinds digital dermatitis)
ask 302: No wrap is known on her left hind, only on right hind. Was one there? (answer: LH no, no wrap taken off / go ahead)

## ended
unanswered 302: No wrap is known on her left hind, only on right hind. Was one there?
place_not_called 302: Both hinds, digital dermatitis: where?
news_unclear 301: "301 RH wrap off; LH wrap off": No wrap is known on her left hind. Was it another cow?
