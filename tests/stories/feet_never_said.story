# "Rest fine" and feet that nobody ever said are asked about when the visit is ended

Which feet "rest fine" spoke of nobody knows, and silence is never "nothing found".

## said
visit 2026-10-27
29 all good
30 LH SU bad outside heel
done

## ended
lifted_not_called 29: The rest was said to be fine, and nobody said which feet are lifted today.
