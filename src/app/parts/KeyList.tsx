import { KeyCap } from './KeyCap.tsx';

/** Keys, and what they do in words. */
export type KeyRow = readonly [readonly string[], string];

/** Keys in a list; `wide` leaves room for three of them side by side. */
export const KeyList = ({ rows, wide = false }: { readonly rows: readonly KeyRow[]; readonly wide?: boolean }) => (
  <dl class={wide ? 'key-list key-list-wide' : 'key-list'}>
    {rows.map(([keys, words]) => (
      <div key={words}>
        <dt>
          {keys.map((key) => (
            <KeyCap key={key}>{key}</KeyCap>
          ))}
        </dt>
        <dd>{words}</dd>
      </div>
    ))}
  </dl>
);
