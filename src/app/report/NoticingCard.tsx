import type { NoticingOfRun } from '../../core/scoring/noticing/noticing.ts';
import { noticingWords } from './noticingWords.ts';

/** How well the operator noticed breaks. */
export const NoticingCard = ({ noticing }: { readonly noticing: NoticingOfRun }) => (
  <section class="noticing" aria-labelledby="noticing-head">
    <h2 id="noticing-head">Noticing</h2>
    {noticingWords(noticing).map((words) => (
      <p key={words}>{words}</p>
    ))}
  </section>
);
