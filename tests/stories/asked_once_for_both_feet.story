# What is not called of the same lesion on both feet is told once, and asked once at the end

What was not called is a mark on the line while she stands there, never an alarm.

## said
visit 2026-10-27
today hinds
412 routine
both hinds double sole
done
513 routine
LH DD
RH DD raw
done

## answered
told: today's feet: LH RH
mark 412: claw, degree not called (both hinds double sole)
saved 412
mark 513: place, stage not called (left hind digital dermatitis)
mark 513: place not called (right hind digital dermatitis)
saved 513

## ended
place_not_called 412: Both hinds, double sole: on which claw?
place_not_called 513: Both hinds, digital dermatitis: where?
degree_not_called 412: Both hinds, double sole: how bad?
stage_not_called 513: Left hind, digital dermatitis: at which stage?
