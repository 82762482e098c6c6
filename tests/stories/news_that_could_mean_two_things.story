# "Wrap off" with a wrap on both hinds is asked about

Nothing is closed until it is clear which foot is meant. The words are kept, and what nobody has
made clear is asked once more at the end.

## given
visit 2026-10-20
today all four
412 lame RH
both hinds DD raw behind; wrap on
rest fine
513 lame RH
both hinds DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
412 wrap off
412 wrap off LH
513 wrap off
513 wrap off

## answered
question 412: Which wrap: left hind or right hind?
told 412: closed: wrap off left hind
question 513: Which wrap: left hind or right hind?
question 513: Which wrap: left hind or right hind?

## due 2026-10-27
due 412: wrap off right hind (farmer, by 2026-10-25)
due 513: wrap off left hind (farmer, by 2026-10-25)
due 513: wrap off right hind (farmer, by 2026-10-25)
due 412: look at the sore on left hind (farmer, by 2026-10-30)
due 412: look at the sore on right hind (farmer, by 2026-10-30)
due 513: look at the sore on left hind (farmer, by 2026-10-30)
due 513: look at the sore on right hind (farmer, by 2026-10-30)

## ended
news_unclear 513: "513 wrap off": Which wrap: left hind or right hind?
due_not_seen 412: wrap off right hind is due and she was not seen
due_not_seen 513: wrap off left hind is due and she was not seen
due_not_seen 513: wrap off right hind is due and she was not seen
