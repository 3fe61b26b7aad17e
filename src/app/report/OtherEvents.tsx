import type { RunResult } from '../../core/run/result.ts';
import { clockText } from '../parts/clockText.ts';
import { capital } from '../parts/sentence.ts';
import { REMEDY_SENTENCES } from '../run/words.ts';
import { emptyNotices, secondsAt } from './reportFacts.ts';

/** What else happened: remedies, notices that had nothing to answer, cues. In order of time. */
export function OtherEvents({ result }: { readonly result: RunResult }) {
  const events = [
    ...result.remedies.map((remedy) => ({ step: remedy.startStep, words: `You ${REMEDY_SENTENCES[remedy.remedy]}.` })),
    ...emptyNotices(result).map((step) => ({ step, words: 'You said that sterility was broken; nothing was.' })),
    ...result.cues.map((cue) => ({ step: cue.step, words: capital(cue.words) })),
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
