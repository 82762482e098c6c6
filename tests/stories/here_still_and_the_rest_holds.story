# She is here still, and what else was told of her in that line holds

Only that she left is taken back.

## given
visit 2026-10-20
today hinds
210 LH DD raw behind; wrap on; rest fine
222 LH outside SU heel, bad; block on inside; rest fine
223 LH outside SU heel, bad; block on inside; rest fine
done

## said
visit 2026-10-27
today hinds
210 wrap off; gone
210 not gone
222 block gone; sold
222 no, still here
222 no, no block gone
223 sold, block gone
no, 223 still here

## answered
told: today's feet: LH RH
told 210: closed: wrap off left hind
told 210: closed: look at the sore on left hind
told 210: taken back: 210 wrap off; gone
told 210: closed: wrap off left hind
told 222: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw; to do: ring trimmer: block lost early, left hind
told 222: closed: ring trimmer: block lost early, left hind
told 222: taken back: 222 block gone; sold
told 222: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw; to do: ring trimmer: block lost early, left hind
told 222: taken back: 222 block gone; sold; 222 no, still here
told 223: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
told 223: noted; nothing of hers was waiting for it
told 223: taken back: 223 sold, block gone
told 223: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw; to do: ring trimmer: block lost early, left hind
