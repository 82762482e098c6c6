# What nobody knew of is asked about at the next visit, and is closed by what is told of it then

The block of 412 was seen on her left hind; of 513 nobody said on which foot her wrap is.

## given
visit 2026-10-06
today hinds
412 nothing found
513 nothing found
614 nothing found
done
visit 2026-10-13
today hinds
513 wrap still on
614 wrap still on
412 recheck
LH block still on; nothing found
RH nothing found
done

## said
visit 2026-10-27
today hinds
614 wrap came off
412 nothing found
LH block taken off
done
513 nothing found
RH wrap still on
done

## answered
told: today's feet: LH RH
told 614: closed: ask since when a wrap is on her
ask 412: Block on left hind seen 13 Oct (14 d): still on? (answer: LH block still on / LH block came off / LH block taken off / LH block don't know)
saved 412
ask 513: Wrap told on her 13 Oct, of no foot: on which is it? (answer: LH wrap still on / RH wrap still on / LF wrap still on / RF wrap still on / go ahead)
saved 513

## recorded
412 | LH nothing_found; block_off | fine RH
513 | RH nothing_found; wrap_still_on | fine LH

## ended
on_since_when 513: Wrap still on right hind, and nobody knew of it: since when is it on?

## due 2026-10-27
due 513: ask since when a wrap is on right hind (farmer, by 2026-10-27)
