# Of a range every number is asked about, and each cow is settled as she is called

## said
visit 2026-10-27
today hinds
250-253 all trimmed
250 all good
251 RH SU outside heel bad
rest fine
252 all good
done

## answered
told: today's feet: LH RH
refused line 2: "250-253" may mean the numbers between too; say each number: 250, 251, 252, 253
saved 250
saved 251
saved 252

## recorded
250 | fine LH RH
251 | RH outside SU heel bad | fine LH
252 | fine LH RH

## ended
news_unclear 253: "250-253 all trimmed": This was not understood. What was told?
