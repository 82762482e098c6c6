# A number that comes back after its cow was told gone belongs to a new cow until somebody says so

## given
visit 2026-09-29
today all four
77 lame RH
RH outside white line abscess heel, bad; block on inside
rest fine
visit 2026-10-13
77 gone

## said
visit 2026-10-27
today all four
77 nothing found
done

## answered
told: today's feet: LF RF LH RH
question 77: 77 was said to be gone on 13 Oct; taken for a new cow. Is she the same?
saved 77

## cow 77
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH: nothing found
2026-10-27 RH: nothing found

## ended
number_given_twice 77: 77 was said to be gone on 13 Oct; taken for a new cow. Is she the same?
