# "Which one is off?" is answered with her number and the foot, and she does not come back for it

News of several cows that nobody could read is asked of every cow it names, also behind other words.
Who stands in the crush for the first time may be named in news as well.

## given
visit 2026-10-13
101 LH DD raw behind
102 RH DD raw behind

## said
visit 2026-10-27
today all four
412 LH DD raw; wrap on, off Thu; rest fine
413 nothing found
412 wrap off
412 LH wrap off
414 LH bruise slight outside heel
412, 414 vet came
rest fine
done
101 blocks gone and 102 wraps gone
still lame: 101, 102

## answered
told: today's feet: LF RF LH RH
mark 412: place not called (left hind digital dermatitis)
saved 412
question 412: Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.
told 412: closed: wrap off left hind
saved 413
told 412: noted; nothing of hers was waiting for it
told 414: noted; nothing of hers was waiting for it
saved 414
refused line 10: "blocks gone" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "block gone"?
refused line 10: "wraps gone" is not understood either; did you mean "wrap gone"?
refused line 11: "still lame" cannot stand here; expected a number, "no number", today's feet or caller or writer; news comes behind the number of a cow: 77 gone
refused line 11: the number 101 stands alone; a bare number is a cow, and only at the start of a line; say a place as z4, a time as 28d or 4 weeks, a length as 78 mm
refused line 11: the number 102 stands alone; a bare number is a cow, and only at the start of a line; say a place as z4, a time as 28d or 4 weeks, a length as 78 mm

## recorded
412 | LH DD raw; wrap_on for 2026-10-29 | fine LF RF RH
413 | fine LF RF LH RH
414 | LH outside SH heel slight | fine LF RF RH

## ended
place_not_called 412: Left hind, digital dermatitis: where?
news_unclear 101: "101 blocks gone and 102 wraps gone": This was not understood. What was told?
news_unclear 101: "still lame: 101, 102": This was not understood. What was told?
news_unclear 102: "101 blocks gone and 102 wraps gone": This was not understood. What was told?
news_unclear 102: "still lame: 101, 102": This was not understood. What was told?

## due 2026-10-27
due 101: look at the sore on left hind (farmer, by 2026-10-23)
due 102: look at the sore on right hind (farmer, by 2026-10-23)
coming 412: look at the sore on left hind (farmer, by 2026-11-06)
