# A claw that was amputated left a stump, also where nobody called it missing

## given
visit 2026-10-13
today hinds
675 RH outside toe necrosis; claw amputated by the vet outside
rest fine
done

## said
visit 2026-10-27
today hinds
675 RH stump's healed
rest fine
done

## answered
told: today's feet: LH RH
mark 675: RH claw missing outside (known since 13 Oct)
saved 675

## ended

## recorded
675 | fine LH RH
