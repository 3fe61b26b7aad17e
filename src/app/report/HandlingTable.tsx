import type { RunResult } from '../../core/run/result.ts';
import { listed } from '../parts/sentence.ts';
import { lengthText, shareText } from './reportFacts.ts';

/** How the hands and the drape moved. */
export function HandlingTable({ result }: { readonly result: RunResult }) {
  const { pathM, driftM, dropped } = result.handling;
  const rows: readonly (readonly [string, string])[] = [
    ['Way of the right hand', lengthText(pathM.right)],
    ['Way of the left hand', lengthText(pathM.left)],
    ['Drape moved, right side', lengthText(driftM.right)],
    ['Drape moved, left side', lengthText(driftM.left)],
    ['Probe steady while at the site', shareText(result.progress.steadyShare)],
    ['Dropped', dropped.length === 0 ? 'nothing' : listed(dropped)],
    ['Sharps in the bin', result.progress.sharpsBinned.length === 0 ? 'none' : listed(result.progress.sharpsBinned)],
  ];
  return (
    <table class="facts">
      <caption>Handling</caption>
      <tbody>
        {rows.map(([name, value]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>{value}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
