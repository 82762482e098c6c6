# With what she was sprayed is told without the foot where only one was

## products
bluemix, labelled yes, milk 0, meat 0, label

## said
visit 2026-10-27
today hinds
501 RH DD raw behind; spray
rest fine
done
done
502 LH DD raw behind; spray
RH DD raw behind; spray
done
done
501 spray with bluemix
done
502 spray with bluemix
never mind
done

## answered
told: today's feet: LH RH
ask 501: Spray: with what, and what is its withdrawal? (answer: no withdrawal / go ahead)
ask 501: Spray: with what, and what is its withdrawal? (answer: no withdrawal / go ahead)
saved 501
saved 502
mark: no cow is in the crush
mark 501: taken as: 501 RH spray with bluemix
saved 501
refused line 12: no foot is named for what was done; say the foot first: LF, RF, LH, RH
mark 502: "502 spray with bluemix" is dropped
saved 502

## recorded
502 | LH DD behind raw; spray | RH DD behind raw; spray
501 | RH DD behind raw; spray bluemix | fine LH
502 | unfinished: nothing was said

## ended
unfinished 502: Her turn was not finished: nothing was said
