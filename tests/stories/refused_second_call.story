# A refused line of a second call is asked about; the foot keeps what was called of it

## said
visit 2026-10-27
today hinds
500 RH DD raw behind
rest fine
done
500 RH DD chronc behind
done

## answered
told: today's feet: LH RH
saved 500
refused line 5: "chronc" is not understood; expected a place, a stage, a degree, words in quotes, a claw or a foot; did you mean "chronic"?
mark 500: "500 RH DD chronc behind" was not understood, nor said again
saved 500

## recorded
500 | RH DD behind raw | fine LH
500 | unfinished: "500 RH DD chronc behind" was not understood

## ended
unfinished 500: Her turn was not finished: "500 RH DD chronc behind" was not understood
