# A number nobody made sure of is offered when news of it comes

Of the cow called "104?" the wrap is told off; she is not in the crush for it.

## given
visit 2026-10-20
today hinds
104? LH DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
today hinds
104 wrap came off
104? wrap came off
412 nothing found
done

## answered
told: today's feet: LH RH
refused line 2: No cow of this herd carries the number 104. Of the one called 104? say "104? wrap came off".
told 104?: closed: wrap off left hind
saved 412

## ended
