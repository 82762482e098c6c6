# "No, chronic" mends the stage; two stages at one place are asked about

## said
visit 2026-10-27
today hinds
69 RH DD raw behind
no, chronic
rest fine
70 RH DD raw behind
RH DD chronic behind
rest fine
RH no, no DD raw
done
71 LH outside bruise toe, slight
LH outside bruise toe, bad
rest fine
done
done
no, slight

## answered
told: today's feet: LH RH
saved 69
ask 70: Right hind, digital dermatitis: raw and chronic at one place. Which holds? (answer: RH no, no DD raw / RH no, no DD chronic / go ahead)
saved 70
ask 71: Left hind, sole haemorrhage: slight and bad at one place. Which holds? (answer: LH no, no outside bruise slight / LH no, no outside bruise bad / go ahead)
ask 71: Left hind, sole haemorrhage: slight and bad at one place. Which holds? (answer: LH no, no outside bruise slight / LH no, no outside bruise bad / go ahead)
saved 71
saved 71

## recorded
69 | RH DD behind chronic | fine LH
70 | RH DD behind chronic | fine LH
71 | LH outside SH toe slight | fine RH

## ended
