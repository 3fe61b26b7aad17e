import { listed } from '../../parts/sentence.ts';
import { noticingWords } from '../noticingWords.ts';
import type { ReportView } from '../reportView.ts';

/** Bundle, noticing, policy and what to practise next, each in a few lines. */
export function PrintRemarks({ view }: { readonly view: ReportView }) {
  const { bundle, noticing, flags, exercises } = view;
  const attempt = bundle.attempts.at(-1)!;
  const missed = attempt.bundle.elements.filter(({ met }) => !met);
  return (
    <dl class="print-remarks">
      <div>
        <dt>Insertion bundle (CDC, NHSN 57.125)</dt>
        <dd>
          {attempt.bundle.met ? 'All four elements met' : `Not met: ${missed.map(({ why }) => why).join(' ')}`}
          {attempt.punctureStep === null && ' (the skin was not punctured)'}
          {attempt.bundle.met && '.'} {attempt.bundle.safetyFlags.join(' ')} What came before the run is the scenario’s word. Not measured: {listed(bundle.notMeasured)}.
        </dd>
      </div>
      <div>
        <dt>Noticing</dt>
        <dd>{noticingWords(noticing).join(' ')}</dd>
      </div>
      {flags.length > 0 && (
        <div>
          <dt>Outside published practice</dt>
          <dd>{flags.map(({ setting, value, published }) => `${setting}: ${value} (published: ${published})`).join('. ')}.</dd>
        </div>
      )}
      {exercises.length > 0 && (
        <div>
          <dt>Practise next</dt>
          <dd>
            <ol>
              {exercises.map(({ scenarioId, seed, title, why }) => (
                <li key={scenarioId}>
                  {title}, seed {seed}. {why}
                </li>
              ))}
            </ol>
          </dd>
        </div>
      )}
    </dl>
  );
}
