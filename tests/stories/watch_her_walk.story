# Her walk is watched when somebody calls it, by the day that was called

How long to watch a cow has no published number, so no rule makes the task, and it needs its time.

## given
visit 2026-10-20
today hinds
412 lame LH
LH nothing found
watch her walk in 7d
go ahead
done

## said
visit 2026-10-27
news 412 walks sound

## answered
told 412: closed: watch her walk
