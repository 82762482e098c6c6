# Who was not like the others is asked about when nothing is called of her

## said
visit 2026-10-27
today hinds
12 heifers, all good bar the little black one
413 nothing found
done

## recorded
little black one | unfinished: nothing was said
413 | fine LH RH

## ended
unnumbered little black one: Which number has she: little black one?
unfinished little black one: Her turn was not finished: nothing was said
