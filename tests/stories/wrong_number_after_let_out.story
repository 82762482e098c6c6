# "No, 421" after she was let out corrects the last turn

The record of 412 no longer holds it; nothing is lost, for the correction is a new entry.

## said
visit 2026-10-27
today all four
412 lame LH
LH outside white line abscess heel, bad; opened; block on inside
rest fine
done
no, 421
430 nothing found
done

## answered

## cow 412

## cow 421

## turns
