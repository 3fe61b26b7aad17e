import type { PolicyFlag } from '../../core/ledger/rules/policyFlags.ts';
import { sourceWords } from '../../core/ledger/rules/sourceWords.ts';

/** Settings of the scenario outside what is published. */
export function PolicyFlags({ flags }: { readonly flags: readonly PolicyFlag[] }) {
  if (flags.length === 0) return null;
  return (
    <section class="policy-flags" aria-labelledby="flags-head">
      <h2 id="flags-head">This scenario leaves published practice</h2>
      <ul>
        {flags.map(({ path, setting, value, published, source, mark }) => (
          <li key={path}>
            {setting}: <strong>{value}</strong>. Published: {published}. <span class="small">{sourceWords(source, mark)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
