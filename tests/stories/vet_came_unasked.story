# A vet who came unasked is taken as told while no other cow waits for one

## given
visit 2026-10-06
today all four
77 lame RF
RF foul between, bad; vet; told the farmer
rest fine
150 nothing found
620 nothing found
done

## said
visit 2026-10-20
today hinds
620 vet came
150 nothing found
77 vet came; 77 gone
150 vet came
done

## answered
told: today's feet: LH RH
question 620: No vet was to come to her, but to 77. Was it 77?
told 77: closed: vet to see right front, farmer rings
told 77: kept as gone
told 150: noted; nothing of hers was waiting for it
saved 150

## ended
news_unclear 620: "620 vet came": No vet was to come to her, but to 77. Was it 77?
