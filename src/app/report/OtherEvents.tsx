import type { RunResult } from '../../core/run/result.ts';
import { clockText } from '../parts/clockText.ts';
import { capital } from '../parts/sentence.ts';
import { REMEDY_SENTENCES } from '../run/words.ts';
import { secondsAt } from './reportFacts.ts';

/** What else happened: remedies, notices, cues. In order of time. */
export function OtherEvents({ result }: { readonly result: RunResult }) {
  const events = [
    ...result.remedies.map((remedy) => ({ step: remedy.startStep, words: `You ${REMEDY_SENTENCES[remedy.remedy]}.` })),
    ...result.notices.map(({ step, breaks }) => ({ step, words: breaks.length > 0 ? 'You said that sterility was broken.' : 'You said that sterility was broken; nothing was.' })),
    ...result.cues.map((cue) => ({ step: cue.step, words: cue.kind === 'assistantSpeaks' ? `Assistant: ${cue.words}` : capital(cue.words) })),
  ].sort((a, b) => a.step - b.step);
  return (
    <table class="facts events">
      <caption>What else happened</caption>
      <tbody>
        {events.map((event, k) => (
          <tr key={k}>
            <td>{clockText(secondsAt(event.step))}</td>
            <td>{event.words}</td>
          </tr>
        ))}
        {events.length === 0 && (
          <tr>
            <td colSpan={2}>Nothing.</td>
          </tr>
        )}
      </tbody>
    </table>
  );
}
