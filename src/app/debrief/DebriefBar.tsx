import type { RunFile } from '../../core/recording/recording.ts';
import { durationText } from '../parts/clockText.ts';
import { counted } from '../parts/sentence.ts';
import { Swatch } from '../run/Swatch.tsx';
import { secondsAt } from '../report/reportFacts.ts';
import type { Debrief } from './useDebrief.ts';
import { leadSentence } from './leadSentence.ts';
import { replayNotice } from './replayNotice.ts';
import { verdictOf } from './verdictOf.ts';

interface DebriefBarProps {
  readonly file: RunFile;
  readonly debrief: Debrief;
  readonly onReport: () => void;
  readonly onSave: () => void;
}

/** What the run came to, in a word and a sentence, and the ways out. */
export function DebriefBar({ file, debrief, onReport, onSave }: DebriefBarProps) {
  const { result, source } = debrief;
  const { scenario } = file.header;
  const verdict = result && (verdictOf(result, scenario)?.verdict ?? null);
  const critical = result?.breaks.filter(({ severity }) => severity === 'critical').length ?? 0;
  const notice = replayNotice(file, source, debrief.fault);
  return (
    <header class="bar debrief-bar">
      <h1 class="bar-title">Debrief</h1>
      <span class="bar-scenario">
        {scenario.title}, {durationText(secondsAt(file.steps))}
      </span>
      {verdict && (
        <span class={verdict === 'met' ? 'verdict verdict-met' : 'verdict'}>
          <Swatch mark={verdict === 'met' ? 'sterile' : 'became'} />
          <strong>{verdict === 'met' ? 'met' : 'not yet'}</strong>
          {critical > 0 && <span>{counted(critical, 'critical break')}</span>}
        </span>
      )}
      <span class="debrief-lead">{result && leadSentence(result, scenario)}</span>
      <span class="report-actions">
        <button onClick={onReport}>Report</button>
        <button onClick={onSave}>Save the run file</button>
      </span>
      {notice && (
        <p class="debrief-notice" role="status">
          {notice}
        </p>
      )}
    </header>
  );
}
