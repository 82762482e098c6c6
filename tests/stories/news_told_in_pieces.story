# Of news nobody could read each piece is told again, or asked about

Another word of the same cow settles nothing. What stood in the line before her number is not hers.

## given
visit 2026-10-20
today hinds
300 LH DD raw; wrap; rest fine
301 RH SU heel outside, bad; block inside; rest fine
302 LH DD raw; wrap; rest fine
303 rest fine
done

## said
visit 2026-10-27
today hinds
300 wrap off, still lame; 301 blok gone
300 wrap off; 301 block gone
302 wrap off, still lame; 301 blok gone
302 still lame
news 302 wrap came off
303 LH SU, 301 RH SU
303 kicks
news 303 kicks
411 rest fine
done

## ended
news_unclear 300: "300 wrap off, still lame; 301 blok gone": This was not understood. What was told?
news_unclear 301: "302 wrap off, still lame; 301 blok gone": This was not understood. What was told?
news_unclear 301: "303 LH SU, 301 RH SU": It stood in one line with another cow, and nothing of it was taken down. What holds?
news_unclear 303: "303 LH SU, 301 RH SU": It stood in one line with another cow, and nothing of it was taken down. What holds?
due_not_seen 302: still lame, look at her feet: told today, and she was not seen
