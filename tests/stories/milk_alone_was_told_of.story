# Where only her milk was told of, her meat is asked about, and the farmer reads that it is open

The name is on no list. A time alone, said in answer, is of what is still missing.

## said
visit 2026-10-27
today hinds
412 given penstrep; milk 4d
RH sole ulcer middle, bad
rest fine
done
done
513 LH sole ulcer middle, bad; given otherstrep
rest fine
milk 4d
28d
done

## answered
told: today's feet: LH RH
ask 412: Not on the herd's list: penstrep. What meat withdrawal? (answer: go ahead)
mark 412: claw not called (right hind sole ulcer)
ask 412: Not on the herd's list: penstrep. What meat withdrawal? (answer: go ahead)
saved 412
mark 513: claw not called (left hind sole ulcer)
ask 513: Not on the herd's list: otherstrep. What withdrawal? (answer: no withdrawal / go ahead)
ask 513: Not on the herd's list: otherstrep. What meat withdrawal? (answer: go ahead)
mark 513: taken as: meat withheld 28d
saved 513

## milk and meat
412  Last milk held back: Sat 31 Oct evening.
Her meat: withdrawal not known. Ask the vet before she goes for
slaughter.
Medicine given (penstrep), nobody said who ordered it.
Nobody said that she is marked.
513  Last milk held back: Sat 31 Oct evening.
Last day meat held back: Tue 24 Nov.
Medicine given (otherstrep), nobody said who ordered it.
Nobody said that she is marked.
The farm keeps milk and meat back as the label or the vet states it, and takes
the marks off afterwards.

## ended
unanswered 412: Not on the herd's list: penstrep. What meat withdrawal?
place_not_called 412: Right hind, sole ulcer: on which claw?
place_not_called 513: Left hind, sole ulcer: on which claw?
