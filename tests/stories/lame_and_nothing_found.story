# She came lame and nothing shows: look again, look higher, or vet

## said
visit 2026-10-27
today all four
215 lame RF
RF nothing found
RF vet
rest fine
done

## answered

## due 2026-10-27
