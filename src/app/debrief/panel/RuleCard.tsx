import type { RuleWords } from '../../services.ts';

/** The rule that was broken, in words, with its id and source. */
export const RuleCard = ({ id, rule }: { readonly id: string; readonly rule: RuleWords }) => (
  <section class="debrief-part" aria-labelledby="rule-head">
    <header class="part-head">
      <h3 id="rule-head">The rule</h3>
      <code class="rule-id">{id}</code>
    </header>
    <p class="rule-text">{rule.statement}</p>
    <p class="small">Source: {rule.source.replace(/ ?Your local policy comes first\.?/, '')} Your hospital’s policy comes first.</p>
  </section>
);
