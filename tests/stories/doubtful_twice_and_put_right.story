# The right number of a doubtful cow is the right number of both her calls

She was taken for the one who was called so before, so both are of the one she is.

## given
visit 2026-10-20
today hinds
401 RH DD raw behind; rest fine
done

## said
visit 2026-10-27
today hinds
410? heifer; lies down; RH SU outside
411 rest fine
410? LH DD raw behind
no, 401
rest fine
done
420? LH DDD raw behind
no, 402
402 LH DD raw behind
rest fine
done

## answered
told: today's feet: LH RH
mark 410?: place, degree not called (right hind sole ulcer)
saved 410?
saved 411
mark 410?: taken for the one who was called so before
mark 410?: place, degree not called (right hind sole ulcer)
mark 401: put right: all that was called of 410? is hers
saved 401
refused line 8: "DDD" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "DD"?
mark 402: put right: all that was called of 420? is hers
saved 402

## turns
401: 1
402: 1
411: 1

## recorded
411 | fine LH RH
401 heifer | LH DD behind raw | RH outside SU | cow: lies_down
402 | LH DD behind raw | fine RH

## ended
place_not_called 401: Right hind, sole ulcer: where?
degree_not_called 401: Right hind, sole ulcer: how bad?
