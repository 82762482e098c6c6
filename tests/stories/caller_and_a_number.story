# A number behind the caller's name may be the next cow, so no foot is hers until a cow is named

## said
visit 2026-10-27
today hinds
412 nothing found
caller Ben 413
LH outside bruise middle, slight
caller Ben
413 LH outside bruise middle, slight
rest fine
done

## answered
told: today's feet: LH RH
refused line 3: "413" is no part of a name; say "caller Ben" alone, and 413 on the next line; if it is part of the name, put the name in quotes
saved 412
refused line 4: A line before may have named another cow, so it is not clear whose this is. Say her number, and this once more.
told: caller Ben
saved 413
