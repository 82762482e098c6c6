# A withdrawal and none, kicks and kicks no longer: which holds is asked, in one line or in two

## said
visit 2026-10-27
today hinds
205 nothing found; withdrawal 4 days; no withdrawal
no, not no withdrawal
done
206 nothing found; no withdrawal
milk withheld 3d
no, not milk withheld
done
207 nothing found; kicks
no longer kicks
no, not kicks
done

## answered
told: today's feet: LH RH
ask 205: A withdrawal, and no withdrawal. Which holds? (answer: no, not withdrawal / no, not no withdrawal / go ahead)
saved 205
ask 206: A withdrawal, and no withdrawal. Which holds? (answer: no, not milk withheld / no, not no withdrawal / go ahead)
saved 206
ask 207: Kicks, and no longer kicks. Which holds? (answer: no, not kicks / no, not no longer kicks / go ahead)
saved 207

## recorded
205 | fine LH RH | cow: withheld for 2026-10-31
206 | fine LH RH | cow: no_withdrawal
207 | fine LH RH | cow: kicks_no_more

## ended
