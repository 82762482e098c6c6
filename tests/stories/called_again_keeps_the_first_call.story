# A cow that is called again keeps all that was called of her first

Fine are then the feet nobody had spoken of. What was asked about her first stays asked, and so does
a line nobody could read, until it is said again or she is called to the end with "done".

## said
visit 2026-10-27
today all four
415 LH SU outside heel; block on inside; wrap on, off Thu; vet
416 nothing found
415 rest fine
done
417 RH bruise; outside length 78 mm
418 nothing found
417 whole cow nothing found
done
419 LH DD
done
419 nothing found
done
420 LH DD raw behind; unfinished, went down
421 nothing found
420 nothing found
done
422 LH outside SU; block on
423 nothing found
422 nothing found
424 LH DD
425 nothing found
424 RH bruise; rest fine
done
no, LF
426 LH outside SU
426 RH brooze
427 nothing found
426 all fine
428 nothing found
done

## recorded
416 | fine LF RF LH RH
415 | LH outside SU heel; block_on inside; wrap_on for 2026-10-29; vet | fine LF RF RH
418 | fine LF RF LH RH
417 | RH SH | fine LF RF LH
419 | LH DD | fine LF RF RH
421 | fine LF RF LH RH
420 | LH DD behind raw | fine LF RF RH
423 | fine LF RF LH RH
422 | LH outside SU; block_on | fine LF RF RH
425 | fine LF RF LH RH
424 | LF SH | LH DD | fine RF RH
427 | fine LF RF LH RH
426 | LH outside SU | RH not called | fine LF RF | unfinished: "426 RH brooze" was not understood
428 | fine LF RF LH RH
