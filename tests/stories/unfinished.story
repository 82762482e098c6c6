# Input that breaks off leaves an unfinished turn, and the file given again completes it

## from a file
visit 2026-10-27
today all four
412 lame LH
LH outside white line abscess heel, bad; opened

## answered

## turns

## ended

## from a file
today all four
412 lame LH
LH outside white line abscess heel, bad; opened
block on inside
rest fine
done

## answered

## turns

## cow 412
