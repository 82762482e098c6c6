# The right number of a doubtful cow is that of both her calls in a file, which may be given twice

## from a file
visit 2026-10-27
today hinds
410? heifer; lies down; RH SU outside
411 rest fine
410? LH DD raw behind
no, 401
rest fine
done

## the same file again

## answered
told: today's feet: LH RH
mark 410?: place, degree not called (right hind sole ulcer)
saved 410?
saved 411
mark 410?: taken for the one who was called so before
mark 410?: place, degree not called (right hind sole ulcer)
saved 401
there already 410?
there already 411
there already 401

## turns
401: 1
411: 1

## recorded
411 | fine LH RH
401 heifer | LH DD behind raw | RH outside SU | cow: lies_down
