import { REQUEST_KEYS, type RequestKey } from '../input/keyMap.ts';
import { KeyCap } from '../parts/KeyCap.tsx';
import { KeyList, type KeyRow } from '../parts/KeyList.tsx';

const CLUSTERS = [
  { title: 'Right hand (left on the screen)', rows: [['Q', 'W', 'E', 'R'], ['A', 'S', 'D', 'F']], notes: 'W A S D move, Q E turn the wrist, R grip, F use' },
  { title: 'Left hand (right on the screen)', rows: [['Y', 'U', 'I', 'O'], ['H', 'J', 'K', 'L']], notes: 'I J K L move, U O turn the wrist, Y grip, H use' },
] as const;

const capsOf = (needs: RequestKey['needs']): readonly string[] => REQUEST_KEYS.filter((one) => one.needs === needs).map(({ cap }) => cap);

const OTHERS: readonly KeyRow[] = [
  [['Shift'], 'fine: slow movement, held with the others'],
  [['Tab'], 'other hand'],
  [['Space'], 'grip with the active hand'],
  [['B'], 'I broke sterility'],
  [['1', '…', '6'], 'remedies'],
  [capsOf(undefined), 'ask the assistant'],
  [capsOf('gown'), 'ask for the ties of the gown'],
  [capsOf('sheath'), 'ask for probe and sheath'],
  [capsOf('packets'), 'ask for a packet'],
  [capsOf('bed'), 'ask for the bed higher or lower'],
  [['N', 'M'], 'answer the assistant'],
  [['Enter'], 'say it in words'],
  [['P'], 'pause'],
  [['F1', '?'], 'this sheet'],
  [['+', '−'], 'look closer, wider'],
  [['9', '0'], 'all within reach, the field'],
  [['Esc'], 'from the room to the panel and back'],
];

/** The keys as they lie under two hands, and the rest in a list. */
export const KeyClusters = () => (
  <section class="keys" aria-label="Keys">
    <div class="clusters">
      {CLUSTERS.map(({ title, rows, notes }) => (
        <div key={title} class="cluster">
          <h3>{title}</h3>
          {rows.map((row, k) => (
            <div key={k} class={`cluster-row cluster-row-${k}`}>
              {row.map((key) => (
                <KeyCap key={key}>{key}</KeyCap>
              ))}
            </div>
          ))}
          <p>{notes}</p>
        </div>
      ))}
      <p class="small">While the mouse leads, Q E R F serve the active hand.</p>
    </div>
    <KeyList rows={OTHERS} />
  </section>
);
