# What is offered as an answer is taken when she is out, also of a cow whose number is in doubt

A product that is mended, the vet for "111 or 117", the place of a lesion on a foot that was called
twice, and a count that was nothing.

## products
bluemix, labelled yes, milk 0, meat 0, label

## said
visit 2026-10-27
today all four
118 RH DD raw behind; paste with blumix
rest fine
go ahead
119 nothing found
118 RH no, no paste; paste with bluemix
120 RH DD raw behind; paste with blumix
rest fine; go ahead
done
RH no, no paste; paste with bluemix
111 or 117 RF foul slight
rest fine
112 nothing found
111 or 117 RF vet
113 nothing found
304 LH SU outside
rest fine
305 nothing found
304 LH bruise inside heel slight
done
304 LH SU heel bad
done
12 cows
306 nothing found
12 cows never mind
done

## recorded
118 | RH DD behind raw; paste bluemix | fine LF RF LH
119 | fine LF RF LH RH
120 | RH DD behind raw; paste bluemix | fine LF RF LH
112 | fine LF RF LH RH
111 or 117 | RF IP slight; vet | fine LF LH RH
113 | fine LF RF LH RH
305 | fine LF RF LH RH
304 | LH inside SH heel slight
304 | LH outside SU heel bad | fine LF RF RH
306 | fine LF RF LH RH

## ended
doubtful_number 111 or 117: Which is her number: 111 or 117?
called_twice 304: Left hind was called twice in this visit. Do both calls hold?

## from a file
111 lame

## from a file
111 lame RF
111 done

## ended
doubtful_number 111 or 117: Which is her number: 111 or 117? 111 was in the crush today.
called_twice 304: Left hind was called twice in this visit. Do both calls hold?
unanswered 111: Came lame right front, and that foot was not lifted: lift it, or vet.
lifted_not_called 111: All four feet: not lifted, or what was found?
