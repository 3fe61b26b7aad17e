import { exerciseLink, type Exercise } from '../../core/scoring/practise.ts';

interface NextExercisesProps {
  readonly exercises: readonly Exercise[];
  readonly onPractise: (exercise: Exercise) => void;
}

/** What to practise next, each a link that starts it. */
export function NextExercises({ exercises, onPractise }: NextExercisesProps) {
  if (exercises.length === 0) return null;
  const follow = (event: MouseEvent, exercise: Exercise): void => {
    // With a key held the person wants the link itself, in another window.
    if (event.ctrlKey || event.metaKey || event.shiftKey || event.button !== 0) return;
    event.preventDefault();
    onPractise(exercise);
  };
  return (
    <section class="next" aria-labelledby="next-head">
      <h2 id="next-head">Practise next</h2>
      <ol>
        {exercises.map((exercise) => (
          <li key={exercise.scenarioId}>
            <a href={exerciseLink(exercise)} onClick={(event) => follow(event, exercise)}>
              {exercise.title}
            </a>
            <span class="small"> about {exercise.minutes} min</span>
            <p>{exercise.why}</p>
          </li>
        ))}
      </ol>
    </section>
  );
}
