# Of today's feet those nobody spoke of are asked about when the visit is ended

Silence is never "nothing found", nor "not lifted". "Rest fine" answers it.

## said
visit 2026-10-27
today all four
502 LF SU heel outside bad
503 just the backs, RH SU heel outside bad; LH fine; done
504 RH SU heel outside bad; rest fine
505 LF fine
done
505 rest fine
done

## ended
lifted_not_called 502: Right front, left hind and right hind: not lifted, or what was found?
