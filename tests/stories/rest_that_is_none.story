# "Rest fine" where all of today's feet stayed down speaks of none, and that is asked

## said
visit 2026-10-27
today hinds
203 hinds not lifted, rest fine
fronts nothing found
done
204 RH not lifted; LH sole ulcer outside middle, bad
rest fine
done

## answered
told: today's feet: LH RH
question 203: "rest fine" speaks of none of today's feet: all were not lifted. Were others? (answer: LF RF nothing found)
saved 203
saved 204

## recorded
203 | fine LF RF | not lifted LH RH
204 | LH outside SU sole_middle bad | not lifted RH
