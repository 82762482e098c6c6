# "Never mind" of a line that named other cows: what follows is hers who stands there again

## said
visit 2026-10-27
today all four
441 LH SU outside
640 and 188 RH DD
never mind
LF growth
done

## answered
told: today's feet: LF RF LH RH
mark 441: place, degree not called (left hind sole ulcer)
refused line 3: "DD" cannot stand here; expected news of the cow, something done or a foot; what is found is called of one cow: her number, the foot and what was found, on a line of its own
mark 640: "640 and 188 RH DD" is dropped
mark 188: "640 and 188 RH DD" is dropped
mark 441: degree not called (left front growth between the claws)
saved 441

## turns
441: 1
