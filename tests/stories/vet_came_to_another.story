# That the vet came to a cow who waited for none is asked about when another cow waits

A number is typed wrong at the gate more easily than a vet comes unasked. Where no cow waits for the
vet, it is taken as told.

## given
visit 2026-10-06
today all four
77 lame RF
RF foul between, bad; vet; told the farmer
rest fine
231 nothing found
done

## said
visit 2026-10-20
today hinds
231 vet came
no, 77

## answered
told: today's feet: LH RH
question 231: No vet was to come to her, but to 77. Was it 77?
told 231: taken back: 231 vet came
told 77: closed: vet to see right front, farmer rings

## said
77 vet came
231 vet came
231 nothing found
done

## answered
there already 77
told 231: noted; nothing of hers was waiting for it
saved 231

## ended
