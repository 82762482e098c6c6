# The right number of a doubtful cow stays that of both calls when the battery dies

## said
visit 2026-10-27
today hinds
410? heifer; RH SU outside
411 rest fine
410? LH DD raw behind
no, 401

## the battery dies

## said
rest fine
done

## turns
401: 1
411: 1

## recorded
411 | fine LH RH
401 heifer | LH DD behind raw | RH outside SU
