import { useMemo } from 'preact/hooks';
import { practiseNext, type Exercise } from '../../../core/scoring/practise.ts';
import { missingForScore, scoreRun } from '../../../core/scoring/scoreRun.ts';
import type { RunFile } from '../../../core/recording/recording.ts';
import type { RunResult } from '../../../core/run/result.ts';
import type { Services } from '../../services.ts';

interface PractiseNextProps {
  readonly services: Services;
  readonly file: RunFile;
  readonly result: RunResult | null;
  readonly onPractise: (exercise: Exercise) => void;
}

/** What to practise next, as buttons that start it; the first is the one that counts most. */
export function PractiseNext({ services, file, result, onPractise }: PractiseNextProps) {
  const { scenario, seed } = file.header;
  const exercises = useMemo(
    () => (result === null || missingForScore(result, scenario).length > 0 ? [] : practiseNext(scoreRun(result, scenario), { scenarioId: scenario.id, station: scenario.station, seed }, services.scenarios)),
    [result, scenario, seed, services.scenarios],
  );
  return (
    <section class="debrief-part" aria-labelledby="practise-head">
      <h3 id="practise-head">Practise next</h3>
      {exercises.length === 0 && <p>Nothing in particular. Another room on the start page keeps it fresh.</p>}
      {exercises.map((exercise, k) => (
        <div key={exercise.scenarioId} class="exercise">
          <p class="practise-why">{exercise.why}</p>
          <button class={k === 0 ? 'main-button practise' : 'practise'} onClick={() => onPractise(exercise)}>
            <span>{exercise.title}</span>
            <span class="practise-time">about {exercise.minutes} min</span>
          </button>
        </div>
      ))}
      <p class="small">A training aid, not proof of competence.</p>
    </section>
  );
}
