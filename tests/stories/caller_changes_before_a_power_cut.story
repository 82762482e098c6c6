# Who called the cow in the crush is still known when the tablet is taken up again

## said
visit 2026-10-27
caller Anna
today hinds
412 LH DD raw behind
caller Ben

## the battery dies

## said
done
413 nothing found
done

## callers
Anna: 412
Ben: 413

## answered
told: caller Anna
told: today's feet: LH RH
told: caller Ben
mark 412: still in the crush: 412 LH DD raw behind
saved 412
saved 413
