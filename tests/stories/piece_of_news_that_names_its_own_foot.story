# A piece of news that names its own foot is of that foot alone

The foot that stood in front of the piece before it is not meant.

## given
visit 2026-10-13
today hinds
203 both hinds DD raw behind; wrap on
204 both hinds SU outside middle bad; block on inside; RH DD raw behind; wrap on
205 both hinds SU outside middle bad; block on inside
206 both hinds DD raw behind; wrap on
done

## said
visit 2026-10-27
today hinds
203 RH wrap still on; wrap off LH
204 RH wrap off; block off LH
news 205 LH block still on; block off RH
206 LH wrap off; still lame RH

## answered
told: today's feet: LH RH
told 203: noted
told 203: closed: wrap off left hind
told 204: closed: wrap off right hind
told 204: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
told 205: closed: block still on? left hind, inside claw
told 205: closed: block check right hind, inside claw; block off right hind, inside claw; block still on? right hind, inside claw
told 206: closed: wrap off left hind
told 206: closed: look at the sore on right hind; to do: still lame, look at right hind
