# What stood before another cow's number is of her in the crush, the rest is of the other

## said
visit 2026-10-27
today hinds
54 RH SU outside heel bad
rest fine, 412 RH whilte line side
rest fine
412 RH white line side
rest fine
done
55 LH SU outside heel bad
rest fine, 413 RH whilte line side
RH white line side
done

## answered
told: today's feet: LH RH
refused line 3: the number 412 stands alone; a bare number is a cow, and only at the start of a line; say a place as z4, a time as 28d or 4 weeks, a length as 78 mm
refused line 3: "whilte line" is not understood either; did you mean "white line"?
saved 54
mark 412: claw, degree not called (right hind white line lesion)
saved 412
refused line 9: the number 413 stands alone; a bare number is a cow, and only at the start of a line; say a place as z4, a time as 28d or 4 weeks, a length as 78 mm
refused line 9: "whilte line" is not understood either; did you mean "white line"?
mark 55: "rest fine" was not understood, nor said again
saved 55
refused line 10: A line before may have named another cow, so it is not clear whose this is. Say her number, and this once more.
mark no number: "RH white line side" was not understood, nor said again
saved no number

## recorded
54 | RH outside SU heel bad | fine LH
412 | RH WL white_line_side | fine LH
55 | LH outside SU heel bad | unfinished: "rest fine" was not understood
no number | RH not called | unfinished: "RH white line side" was not understood

## ended
unnumbered no number: Which number has she?
unfinished 55: Her turn was not finished: "rest fine" was not understood
unfinished no number: Her turn was not finished: "RH white line side" was not understood
lifted_not_called no number: Right hind: what was found?
place_not_called 412: Right hind, white line lesion: on which claw?
degree_not_called 412: Right hind, white line lesion: how bad?
news_unclear 413: "413 RH whilte line side": It stood in one line with another cow, and nothing of it was taken down. What holds?
