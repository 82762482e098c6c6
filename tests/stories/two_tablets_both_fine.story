# A foot that both tablets wrote down as fine is one call, and not asked about

Two assistants heard the same. What one wrote down otherwise is asked about.

## on tablet B

## on tablet A

## said
visit 2026-10-27
today hinds
412 nothing found
413 nothing found
done

## answered
told: today's feet: LH RH
saved 412
saved 413

## on tablet B

## said
visit 2026-10-27
today hinds
412 nothing found
413 RH outside bruise middle, slight
rest fine
done

## answered
told: today's feet: LH RH
saved 412
saved 413

## the tablets meet

## ended
called_twice 413: Right hind was called twice in this visit. Do both calls hold?
