import type { BundleAttempt, BundleOfRun } from '../../core/scoring/bundle/bundleOfRun.ts';
import { clockText } from '../parts/clockText.ts';
import { listed } from '../parts/sentence.ts';
import { secondsAt } from './reportFacts.ts';

/** The published insertion bundle of the run, beside the verdict, with what it does not measure. */
export const BundleCard = ({ bundle }: { readonly bundle: BundleOfRun }) => (
  <section class="bundle" aria-labelledby="bundle-head">
    <h2 id="bundle-head">Insertion bundle (CDC, NHSN 57.125)</h2>
    {bundle.attempts.map((attempt) => (
      <Attempt key={attempt.preparedStep} attempt={attempt} several={bundle.attempts.length > 1} />
    ))}
    <details>
      <summary>What the bundle does not measure</summary>
      <p class="small">It says nothing about {listed(bundle.notMeasured)}.</p>
      <ul class="small">
        {bundle.interpretations.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </details>
  </section>
);

function Attempt({ attempt, several }: { readonly attempt: BundleAttempt; readonly several: boolean }) {
  const { elements, met, safetyFlags } = attempt.bundle;
  return (
    <>
      <p class={met ? 'bundle-outcome' : 'bundle-outcome broken-words'}>
        {met ? 'All four elements met' : 'Not met'}
        {several && `, skin prepared at ${clockText(secondsAt(attempt.preparedStep))}`}
        {attempt.punctureStep === null && ' (the skin was not punctured)'}.
      </p>
      <ul class="reasons">
        {elements.map(({ id, title, met: isMet, why }) => (
          <li key={id} class={isMet ? 'reason' : 'reason reason-fails'}>
            <span class="reason-mark" role="img" aria-label={isMet ? 'met' : 'not met'}>
              {isMet ? '✓' : '✕'}
            </span>
            <span>
              {title}
              <span class="small bundle-why">{why}</span>
            </span>
          </li>
        ))}
      </ul>
      {attempt.origins.some(({ from }) => from === 'start') && <p class="small">{originWords(attempt)}</p>}
      {safetyFlags.map((words) => (
        <p key={words} class="broken-words">
          {words}
        </p>
      ))}
    </>
  );
}

/** What was done before the run is the scenario's word, not the trainee's work. */
const originWords = ({ origins }: BundleAttempt): string =>
  origins.every(({ from }) => from === 'start') ? 'All of it is what the scenario says was done before the run began.' : 'Part of it is what the scenario says was done before the run began, part was done in the run.';
