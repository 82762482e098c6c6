# News with a foot that a file gives twice is there already

The wrap is off by then, and nobody comes into the crush for it the second time.

## given
visit 2026-10-13
today hinds
202 RH DD raw behind; wrap on
203 both hinds DD raw behind; wrap on
205 both hinds SU outside middle bad; block on inside
done

## from a file
visit 2026-10-27
today hinds
203 LH wrap off
202 wrap off
205 LH block off

## answered
told: today's feet: LH RH
told 202: closed: wrap off right hind
told 203: closed: wrap off left hind
mark 203: taken as news of her; if she was in the crush, say her number and what was found
told 205: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
mark 205: taken as news of her; if she was in the crush, say her number and what was found

## the same file again

## answered
there already 202
there already 203
mark 203: taken as news of her; if she was in the crush, say her number and what was found
ask 205: The block of 13 Oct is on right hind. Right hind meant? (answer: no, RH / go ahead)
there already 205
mark 205: taken as news of her; if she was in the crush, say her number and what was found

## turns

## ended
due_not_seen 203: wrap off right hind is due and she was not seen
