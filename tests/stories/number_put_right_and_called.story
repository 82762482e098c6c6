# Who was put right to another number does not stand for the cow who is called by hers then

The real 412 comes after 421, who was called by her number and said the same. She is recorded, and
the file given again doubles neither.

## from a file
visit 2026-10-27
today hinds
412 nothing found
done
no, 421
412 nothing found
done

## answered
told: today's feet: LH RH
saved 412
saved 421
saved 412

## the same file again

## answered
there already 412
there already 421
there already 412

## recorded
421 | fine LH RH
412 | fine LH RH

## said
413 nothing found
done
no, 414
413 nothing found
done
413 nothing found
done

## answered
saved 413
saved 414
saved 413
there already 413

## recorded
421 | fine LH RH
412 | fine LH RH
414 | fine LH RH
413 | fine LH RH

## ended
