# A number that could be two is recorded as doubtful and asked about at the end

Neither 513 nor 531 gets the finding until somebody says which she was.

## given
visit 2026-10-13
today all four
513 nothing found
531 nothing found
done

## said
visit 2026-10-27
today all four
513 or 531 lame LH
LH DD raw behind; spray
rest fine
done

## answered
told: today's feet: LF RF LH RH
saved 513 or 531

## cow 513
2026-10-13 LF: nothing found
2026-10-13 RF: nothing found
2026-10-13 LH: nothing found
2026-10-13 RH: nothing found

## ended
doubtful_number 513 or 531: Which is her number: 513 or 531?
