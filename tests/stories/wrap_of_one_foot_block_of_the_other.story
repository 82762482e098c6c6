# "Wrap off, RH block came off; LH DD": the foot is of the block, the wrap of the foot that carries one

That is what the refusal of "block gone" says, and it holds as it is typed.

## given
visit 2026-10-20
today hinds
300 LH DD raw; wrap on; RH SU outside; block inside
done

## said
visit 2026-10-27
today hinds
300 wrap off, block gone; LH DD chronic; rest fine
300 wrap off, RH block came off; LH DD chronic; rest fine
done

## answered
told: today's feet: LH RH
refused line 2: no foot is named for what was done; say the foot first: "RH block came off"
mark 300: LH: wrap on since 20 Oct, 7 days, 2 late
mark 300: place not called (left hind digital dermatitis)
saved 300

## recorded
300 | LH DD chronic; wrap_off | RH not called; block_came_off
