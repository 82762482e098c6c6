# A name one letter off is asked about before it becomes a second person

## said
visit 2026-10-27
caller Anneke
writer Joss
writer Jos
writer Jos

## answered
