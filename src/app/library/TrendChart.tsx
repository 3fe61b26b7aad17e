import { useEffect, useRef } from 'preact/hooks';
import type { Severity } from '../../core/ledger/break.ts';
import type { StoredRun } from '../../storage/storedRun.ts';
import { dateText } from '../parts/dateText.ts';
import { counted } from '../parts/sentence.ts';
import { trendOf, type Trend, type TrendBar } from './trend.ts';

const SEVERITIES: readonly Severity[] = ['critical', 'major', 'minor'];
const HEIGHT = 130;
const SCALE = 34;
const BAR = 22;
const GAP = 10;
/** Room that a day under the chart takes, in pixels. */
const DAY_WIDTH = 64;

/** Breaks per run, the newest at the right, and the same as a table. `mixed`: the runs are of several scenarios. */
export function TrendChart({ runs, mixed }: { readonly runs: readonly StoredRun[]; readonly mixed: boolean }) {
  const trend = trendOf(runs);
  const scroll = useRef<HTMLDivElement>(null);
  useEffect(() => scroll.current?.scrollTo({ left: scroll.current.scrollWidth }), [trend.bars.length]);
  if (trend.bars.length === 0) return null;
  return (
    <section class="trend" aria-labelledby="trend-head">
      <header class="trend-head">
        <h2 id="trend-head">Breaks per run</h2>
        <Key />
      </header>
      <div class="trend-frame">
        <Scale trend={trend} />
        <div ref={scroll} class="trend-scroll" tabIndex={0} role="group" aria-label="Chart of breaks per run">
          <Chart trend={trend} />
        </div>
      </div>
      <p class="small">
        {trend.left > 0 ? `The last ${trend.bars.length} of ${trend.bars.length + trend.left} runs in the list, ` : 'The finished runs in the list, '}
        the newest at the right.{mixed && ' They are of several scenarios, which break differently often: choose one to compare like with like.'}
      </p>
      <details>
        <summary>As a table</summary>
        <TrendTable bars={trend.bars} />
      </details>
    </section>
  );
}

const Key = () => (
  <ul class="trend-key" aria-label="Key">
    {SEVERITIES.map((severity) => (
      <li key={severity}>
        <svg width="18" height="18" aria-hidden="true">
          <rect class={`bar-${severity}`} x="1" y="1" width="16" height="16" />
        </svg>
        {severity}
      </li>
    ))}
  </ul>
);

/** Height of a count in the chart. */
const heightOf = ({ top }: Trend, count: number): number => 8 + HEIGHT * (1 - count / top);

/** Numbers beside the chart, which stay where they are when it is scrolled. */
const Scale = ({ trend }: { readonly trend: Trend }) => (
  <svg class="trend-chart" width={SCALE} height={HEIGHT + 36} aria-hidden="true">
    {trend.ticks.map((tick) => (
      <text key={tick} class="trend-text" x={SCALE - 6} y={heightOf(trend, tick) + 5} text-anchor="end">
        {tick}
      </text>
    ))}
  </svg>
);

function Chart({ trend }: { readonly trend: Trend }) {
  const width = Math.max(3, trend.bars.length) * (BAR + GAP) + GAP + DAY_WIDTH / 2;
  const every = Math.ceil(DAY_WIDTH / (BAR + GAP));
  return (
    <svg class="trend-chart" width={width} height={HEIGHT + 36} role="img" aria-label={`Breaks per run from the oldest to the newest: ${trend.bars.map(({ total }) => total).join(', ')}`}>
      <Patterns />
      {trend.ticks.map((tick) => (
        <line key={tick} class="trend-line" x1={0} x2={width} y1={heightOf(trend, tick)} y2={heightOf(trend, tick)} />
      ))}
      {trend.bars.map((bar, k) => (
        <Bar key={bar.key} bar={bar} x={GAP + k * (BAR + GAP)} y={(count) => heightOf(trend, count)} day={k % every === 0} />
      ))}
    </svg>
  );
}

function Bar({ bar, x, y, day }: { readonly bar: TrendBar; readonly x: number; readonly y: (count: number) => number; readonly day: boolean }) {
  let below = 0;
  return (
    <g>
      <title>{`${dateText(bar.startedAt)}, ${bar.title}: ${counted(bar.total, 'break')}`}</title>
      {SEVERITIES.map((severity) => {
        const [from, to] = [below, (below += bar.counts[severity])];
        return to > from && <rect key={severity} class={`bar-${severity}`} x={x} y={y(to)} width={BAR} height={y(from) - y(to)} />;
      })}
      {bar.total === 0 && (
        <text class="trend-text" x={x + BAR / 2} y={y(0) - 5} text-anchor="middle">
          0
        </text>
      )}
      {day && (
        <text class="trend-text" x={x} y={HEIGHT + 30}>
          {dateText(bar.startedAt).replace(/ \d{4},.*/, '')}
        </text>
      )}
    </g>
  );
}

/** Severity by pattern as well as colour, in the manner of the room: crossed for critical, hatched for major, plain tint for minor. */
const Patterns = () => (
  <defs>
    <pattern id="bar-critical" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect width="6" height="6" fill="var(--break-tint)" />
      <path d="M0 1.5H6M1.5 0V6" stroke="var(--break)" stroke-width="3" />
    </pattern>
    <pattern id="bar-major" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect width="6" height="6" fill="var(--white)" />
      <path d="M1 0V6" stroke="var(--break)" stroke-width="1.6" />
    </pattern>
  </defs>
);

const TrendTable = ({ bars }: { readonly bars: readonly TrendBar[] }) => (
  <table class="facts trend-table">
    <thead>
      <tr>
        <th scope="col">Run</th>
        {SEVERITIES.map((severity) => (
          <th key={severity} scope="col">
            {severity}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {bars.map(({ key, startedAt, title, counts }) => (
        <tr key={key}>
          <th scope="row">
            {dateText(startedAt)}, {title}
          </th>
          {SEVERITIES.map((severity) => (
            <td key={severity}>{counts[severity]}</td>
          ))}
        </tr>
      ))}
    </tbody>
  </table>
);
