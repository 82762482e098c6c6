# Sore mouths on two cows: nobody and nothing leaves, and the vet called does not silence it

Also on the tablet that was taken up again in between.

## said
visit 2026-10-27
today hinds
409 routine; sore mouth
rest fine

## the battery dies

## said
412 lame LH; drooling; vet
LH nothing found
rest fine
go ahead
done

## answered
told: today's feet: LH RH
mark 409: still in the crush: 409 routine; sore mouth / rest fine
saved 409
stop 412: Could be notifiable: nobody and nothing leaves. Ring the vet or the authority now. (answer: go ahead)
saved 412

## ended
