# A count nobody could read is no cow, and is asked about unless it is said again

## said
visit 2026-10-27
today hinds
12 heifers, far yard
12 heifers, far yard, all good
12 heifer, all good
12 heifers, all good
500 heifers, all good
412 nothing found
done

## turns
412: 1

## counted
12 heifers, far yard: both hind feet lifted, nothing found on 12
12 heifers: both hind feet lifted, nothing found on 12

## ended
news_unclear 500 heifers: "500 heifers, all good": This count was not understood. How many were they, and what was found?
