# A cow in the very words of one before may be the same, and is never joined by the program

## given
visit 2026-09-29
today hinds
no tag, brown heifer, white star; LH outside sole ulcer heel, bad; block on inside
rest fine
no tag, black cow
nothing found
done

## said
visit 2026-10-27
today hinds
no tag, brown heifer, white star; LH outside sole ulcer heel, slight
rest fine
no tag, black bull
nothing found
done

## answered
told: today's feet: LH RH
saved brown heifer, white star
saved black bull

## ended
unnumbered black bull: Which number has she: black bull?
unnumbered brown heifer, white star: Which number has she: brown heifer, white star? Or is she the one of 29 Sep? Then: evenclaw cow same "brown heifer, white star" "brown heifer, white star of 2026-09-29"
due_not_seen brown heifer, white star: block check left hind, inside claw is due and she was not seen
due_not_seen brown heifer, white star: block off left hind, inside claw is due and she was not seen
