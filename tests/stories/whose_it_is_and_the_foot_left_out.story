# What is offered behind news names the foot that was left out

"900 spray" would be refused as well, for a line that names her needs the foot.

## given
visit 2026-10-06
today all four
412 RH DD raw; wrap on, off 3d; rest fine
done

## said
visit 2026-10-27
today all four
900 LH DD raw
412 wrap off
spray
900 LH spray
rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 900: place not called (left hind digital dermatitis)
told 412: closed: wrap off right hind
refused line 4: The line before told of 412, so it is not clear whose this is. Of her in the crush: "900 LH spray"; of 412: "412 spray", and the foot before it.
saved 900

## recorded
900 | LH DD raw; spray | fine LF RF RH

## ended
place_not_called 900: Left hind, digital dermatitis: where?
