# What was said twice of the wrong foot is mended as if it had been said once

A line is said once more when nobody is sure that it was heard, and after a power cut she is called
again. What was said alike is kept once, so a correction of it is of both sayings: nothing of it
stays where it was not.

## said
visit 2026-10-27
today hinds
329 lame LH
RH DD raw; wrap on, off Thu
RH DD raw; wrap on, off Thu
no, left hind
rest fine
done
330 LH bruise inside slight
LH bruise inside slight
no, outside
rest fine
done
331 both hinds DD raw
both hinds DD raw
no, only LH
RH nothing found
done

## recorded
329 lame LH | LH DD raw; wrap_on for 2026-10-29 | fine RH
330 | LH outside SH slight | fine RH
331 | LH DD raw | fine RH
