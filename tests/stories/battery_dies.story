# The battery dies with a cow in the crush, and her turn goes on

## said
visit 2026-10-27
today all four
412 lame LH
LH outside white line abscess heel, bad; opened

## answered

## the battery dies

## said
LH block on inside
rest fine
done

## answered

## cow 412
