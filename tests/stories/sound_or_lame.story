# "Walks sound" and a lame score cannot both hold, and either is taken back in words to say

## said
visit 2026-10-27
today hinds
512 nothing found
walks sound; mobility 2 of 3
no, mobility 2 of 3
done
513 nothing found
walks sound; mobility 2 of 3
no, mobility 0 of 3
done
514 lame LH
LH sole ulcer outside middle, bad; block on inside
RH nothing found; walks sound
no, lame LH
done
515 walks sound, lame LH
nothing found
no, not lame
done

## answered
told: today's feet: LH RH
ask 512: Walks sound, and mobility 2 of 3. Which holds? (answer: no, mobility 2 of 3 / no, mobility 0 of 3 / go ahead)
saved 512
ask 513: Walks sound, and mobility 2 of 3. Which holds? (answer: no, mobility 2 of 3 / no, mobility 0 of 3 / go ahead)
saved 513
ask 514: Came lame, and walks sound. Which holds? (answer: no, not lame / no, lame LH / go ahead)
saved 514
ask 515: Came lame, and walks sound. Which holds? (answer: no, not lame / no, lame LH / go ahead)
saved 515

## ended
