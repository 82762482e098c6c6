# A name one letter off is asked about before it becomes a second person

## said
visit 2026-10-27
caller Anneke
writer Joss
writer Jos
writer Jos

## answered
told: caller Anneke
told: writer Joss
question: Is Jos the same as Joss? Say the name again if it is somebody else.
told: writer Jos
