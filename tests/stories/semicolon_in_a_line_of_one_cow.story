# In a line of one cow a semicolon parts nothing that a comma does not

Who writes down does not know which sign parts what. Where one cow is told of, what stands behind the
semicolon is of her. "Wraps off" is of every foot that carries one; where two do, "wrap off" is not clear.

## given
visit 2026-10-01
today all four
108 RH SU outside heel bad; block on inside, off 28d
rest fine
301 RH DD raw behind; wrap on, off 4d
rest fine
311 RH DD raw behind; wrap on, off 4d
rest fine
304 both hinds DD raw behind; wrap on, off 4d
rest fine
306 both hinds SU outside heel bad; block on inside, off 28d
rest fine
307 both hinds DD raw behind; wrap on, off 4d
rest fine
done

## said
visit 2026-10-13
today all four
301 wrap off; walks sound
311 wrap off; sold
108 block off; nothing found
rest fine
304 recheck; wraps off; rest fine
306 blocks off; rest fine
307 wrap off; nothing found
307 wraps off, nothing found; rest fine
done

## answered
told: today's feet: LF RF LH RH
told 301: closed: wrap off right hind
told 301: noted
told 311: closed: wrap off right hind
told 311: closed: look at the sore on right hind
mark 108: RH: block on since 1 Oct, 12 days
mark 108: taken: RH nothing found; of the others say rest fine
saved 108
mark 304: LH: wrap on since 1 Oct, 12 days, 8 late
mark 304: RH: wrap on since 1 Oct, 12 days, 8 late
saved 304
mark 306: LH: block on since 1 Oct, 12 days
mark 306: RH: block on since 1 Oct, 12 days
refused line 8: no foot is named for what was done; say the foot first: "LH wrap taken off", "RH wrap taken off"
saved 306
mark 307: LH: wrap on since 1 Oct, 12 days, 8 late
mark 307: RH: wrap on since 1 Oct, 12 days, 8 late
saved 307

## recorded
108 | RH nothing_found; block_off | fine LF RF LH
304 recheck | LH nothing_found; wrap_off | RH nothing_found; wrap_off | fine LF RF
306 | LH nothing_found; block_off | RH nothing_found; block_off | fine LF RF
307 | LH nothing_found; wrap_off | RH nothing_found; wrap_off | fine LF RF

## ended
