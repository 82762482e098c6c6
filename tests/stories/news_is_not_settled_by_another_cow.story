# News of a number nobody carries is not settled by what is called of the cow in the crush

"Done", a wrap and a block are said of 412 and 413; what became of 998 and 997 is still not known.

## said
visit 2026-10-27
today all four
998 gone
997 wrap came off
412 fine
done
413
LH DD raw; wrap, off 3d
rest fine
done

## ended
place_not_called 413: Left hind, digital dermatitis: where?
news_unclear 997: "997 wrap came off": No cow of this herd carries the number 997. Which cow was it?
news_unclear 998: "998 gone": No cow of this herd carries the number 998. Which cow was it?
