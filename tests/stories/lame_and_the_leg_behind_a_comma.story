# Lame, and the leg behind a comma

## said
visit 2026-10-27
today all four
501 lame, LH; SU outside
rest fine
502 lame, front left
LF SU outside
rest fine
done

## answered
told: today's feet: LF RF LH RH
mark 501: place, degree not called (left hind sole ulcer)
saved 501
mark 502: place, degree not called (left front sole ulcer)
saved 502

## recorded
501 lame LH | LH outside SU | fine LF RF RH
502 lame LF | LF outside SU | fine RF LH RH

## ended
place_not_called 501: Left hind, sole ulcer: where?
place_not_called 502: Left front, sole ulcer: where?
degree_not_called 501: Left hind, sole ulcer: how bad?
degree_not_called 502: Left front, sole ulcer: how bad?
