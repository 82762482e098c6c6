# A number nobody carries, typed right in the next line, leaves no question

## given
visit 2026-10-20
today hinds
513 lame LH
LH DD raw behind; wrap on
RH nothing found
done

## said
visit 2026-10-27
531 wrap off
513 wrap off

## answered
refused line 1: No cow of this herd carries the number 531. Did you mean 513?
told 513: closed: wrap off left hind

## ended
