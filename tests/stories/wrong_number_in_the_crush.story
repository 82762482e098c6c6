# "No, 421" while she is in the crush changes the cow

The wrap of 421 is then asked about, not that of 412.

## given
visit 2026-10-13
today all four
421 lame RH
RH DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
today all four
412 routine
LH outside bruise middle, slight
no, 421
rest fine
RH wrap came off
done

## answered

## cow 421

## turns
