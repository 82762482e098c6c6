# What nobody could be sure of stays asked about when she is told to be gone

She needs nothing any more, but the words may have been of another cow, or "gone" was.

## given
visit 2026-10-20
today hinds
303 LH SU heel outside, bad; block inside; rest fine
304 rest fine
305 LH SU heel outside, bad; block inside; rest fine
done

## said
visit 2026-10-27
today hinds
303, 305 blok lost
303 gone
304 block lost
304 gone
305 block lost
305 gone
411 rest fine
done

## answered
told: today's feet: LH RH
refused line 2: "blok lost" is not understood; expected news of the cow, something done, a foot or a number; did you mean "block lost"?
told 303: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
question 304: No block is known on her. Was it another cow?
told 304: kept as gone
told 305: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw; to do: ring trimmer: block lost early, left hind
told 305: closed: ring trimmer: block lost early, left hind
saved 411

## ended
news_unclear 303: "303, 305 blok lost": This was not understood. What was told?
news_unclear 304: "304 block lost": No block is known on her. Was it another cow?
