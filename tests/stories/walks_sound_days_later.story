# Told to walk sound on a later day than to be lame still: there is nothing to look at any more

Whoever tells it has seen her walk since. A sore that was found is looked at all the same.

## given
visit 2026-10-13
today hinds
228 LH outside SU; rest fine
229 rest fine
done
visit 2026-10-20
today hinds
228 still lame LH
229 still lame
413 nothing found
done

## said
visit 2026-10-27
today hinds
news 228 walks sound
news 229 walks sound
413 nothing found
done

## answered
told: today's feet: LH RH
told 228: noted
told 229: closed: still lame, look at her feet
saved 413

## due 2026-10-27
overdue 228: still lame, look at left hind (trimmer, by 2026-10-20)
coming 228: see again left hind (trimmer, by 2026-11-10)
