# What became of a known wrap is news in either order while another cow is not at her end

412 walks by without her wrap while the left hind of 900 is up. She does not come into the crush for
it, and what is said next is asked about, as behind any news.

## given
visit 2026-10-06
today all four
412 RH DD raw; wrap on, off 3d; rest fine
413 LH outside SU; block on inside; rest fine
900 nothing found
done

## said
visit 2026-10-27
today all four
900 LH DD raw
412 RH wrap off
RH SU; block on inside
900 RH SU outside; block on inside
413 LH block still on
900 rest fine
413 LH block off
LH nothing found
rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 900: place not called (left hind digital dermatitis)
told 412: closed: wrap off right hind
refused line 4: The line before told of 412, so it is not clear whose this is. Of her in the crush: "900 RH SU; block on inside"; of 412: "412 RH SU; block on inside".
mark 900: place, degree not called (right hind sole ulcer)
told 413: closed: block still on? left hind, inside claw
saved 900
saved 413

## recorded
900 | LH DD raw | RH outside SU; block_on inside | fine LF RF
413 | LH nothing_found; block_off | fine LF RF RH

## turns
413: 1
900: 1

## ended
place_not_called 900: Left hind, digital dermatitis: where?
place_not_called 900: Right hind, sole ulcer: where?
degree_not_called 900: Right hind, sole ulcer: how bad?
