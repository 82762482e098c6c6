# A foot in front of the next news is of that one

## given
visit 2026-10-13
today hinds
202 both hinds DD raw behind; wrap on
202 RH SU outside middle bad; block on inside
203 both hinds DD raw behind; wrap on
301 LH SU outside middle bad; block on inside
204 RH DD raw behind; wrap on
done

## said
visit 2026-10-27
today hinds
202 wraps off, RH block off
203 wrap off, RH
203 wrap off today LH
301 recheck; block gone; rest fine
204 RH wrap off today, DD scab behind
rest fine
done

## answered
told: today's feet: LH RH
told 202: closed: wrap off left hind; wrap off right hind
told 202: closed: block check right hind, inside claw; block off right hind, inside claw; block still on? right hind, inside claw
told 203: closed: wrap off right hind
told 203: closed: wrap off left hind
mark 301: LH: block on since 13 Oct, 14 days
saved 301
saved 204

## recorded
301 recheck | LH nothing_found; block_came_off | fine RH
204 | RH DD behind scab; wrap_off | fine LH

## ended
