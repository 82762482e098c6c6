# A number that was put right stays so when the battery dies, whatever is mended after that

A foot that is moved takes nothing of who she is back. What she was called first is known as well.

## given
visit 2026-10-20
today hinds
401 RH SU heel outside, bad
rest fine
done

## said
visit 2026-10-27
today hinds
410 LH DD raw
no, 401

## the battery dies

## said
no, RH
rest fine
done
430 LH DD raw
no, 431
no, RH
rest fine
done
412 or 421
no, 412
LH DD raw

## the battery dies

## said
no, RH
rest fine
done
410 LH DD raw
no, 411

## the battery dies

## said
no, other left, RH I meant
rest fine
done
no number, brown
LH DD raw
no, 441

## the battery dies

## said
no, RH
no, only LH
rest fine
done

## recorded
401 | RH DD raw | fine LH
431 | RH DD raw | fine LH
412 | RH DD raw | fine LH
411 | RH DD raw | fine LH
441 | LH DD raw | fine RH

## cow 401
cow 401, called 410 on 2026-10-27, then put right
case: DD RH, found 1x
2026-10-27 LH: nothing found
2026-10-27 RH: digital dermatitis, raw (DD)
2026-10-20 LH: nothing found
2026-10-20 RH: outside claw: sole ulcer, heel, bad (SU)
