# A name a letter off in a file is read as the known one, told, and asked about at the end

Said again on the next line it is somebody else.

## said
visit 2026-10-27
caller Anneke
writer Joss
412 nothing found
done

## from a file
caller Anneka
writer Jos
writer Jos
413 LH DD raw behind
done
caller Ben
414 LH DD raw behind
done

## callers
Anneke: 412, 413
Ben: 414

## answered
told: caller Anneke
told: writer Joss
question: Which feet are lifted today? Until that is said "rest fine" fills none. (answer: today all four / today both hinds)
saved 412
question: Anneka was read as Anneke; say "caller Anneka" on the next line if it is somebody else.
told: caller Anneke
question: Jos was read as Joss; say "writer Jos" on the next line if it is somebody else.
told: writer Joss
told: writer Jos
saved 413
told: caller Ben
saved 414

## ended
lifted_not_called 412: The rest was said to be fine, and nobody said which feet are lifted today.
news_unclear caller: A name a letter or two off was read as Anneke. Was it Anneke, or who?
