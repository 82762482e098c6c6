# News nobody could read and nobody said again is asked about when the visit closes

## given
visit 2026-10-13
today hinds
231 nothing found
513 nothing found
88 nothing found
done

## from a file
visit 2026-10-27
today hinds
231, 513 stil lame
231, 513 still lame
88, 513 wrps of
412 nothing found
done

## answered
told: today's feet: LH RH
refused line 2: "stil lame" is not understood; expected news of the cow, something done, a foot or a number; did you mean "still lame"?
told 231: to do: still lame, look at her feet
told 513: to do: still lame, look at her feet
refused line 4: "wrps of" is not understood; expected news of the cow, something done, a foot or a number; did you mean "wraps off"?
saved 412

## ended
news_unclear 513: "88, 513 wrps of": This was not understood. What was told?
news_unclear 88: "88, 513 wrps of": This was not understood. What was told?
due_not_seen 231: still lame, look at her feet: told today, and she was not seen
due_not_seen 513: still lame, look at her feet: told today, and she was not seen
