# Two words in one line for how she left are asked about as on two lines

## given
visit 2026-10-20
today hinds
77 rest fine
78 rest fine
79 rest fine
412 LH DD raw; wrap; rest fine
done

## said
visit 2026-10-27
today hinds
77 died; 77 sold
77 sold
78 sold; 412 wrap off; 78 died
79 gone; 79 died
411 rest fine
done

## answered
told: today's feet: LH RH
told 77: kept as gone
question 77: Told before at this visit: "77 died; 77 sold". Which holds? Say this again if it does.
told 77: kept as gone
told 78: kept as gone
told 412: closed: wrap off left hind
question 78: Told before at this visit: "78 sold; 412 wrap off; 78 died". Which holds? Say this again if it does.
told 79: kept as gone
there already 79
saved 411

## ended
news_unclear 78: "78 died": Told before at this visit: "78 sold; 412 wrap off; 78 died". Which holds? Say this again if it does.
