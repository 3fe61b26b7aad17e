import { useMemo } from 'preact/hooks';
import { THING_WORDS } from '../../../core/debrief/nearMisses.ts';
import type { ClearanceThing } from '../../../core/room/clearanceThings.ts';
import { SIDES } from '../../../core/base/side.ts';
import type { TraceView } from '../../../core/debrief/traceTypes.ts';
import { capital, listed } from '../../parts/sentence.ts';
import { lengthText } from '../../report/reportFacts.ts';
import type { PlayHead } from '../PlayHead.ts';
import { momentText } from '../timeText.ts';
import { usePlayHead } from '../usePlayHead.ts';
import { clearanceCharts, clearancePath, CLEARANCE_TOP_M, GUIDE_M, yOf, type ClearanceChart } from './clearanceLines.ts';

const WIDE = 384;
const HIGH = 74;

interface ClearancePanelProps {
  readonly head: PlayHead;
  readonly trace: TraceView;
  /** Changes when the trace has grown. */
  readonly revision: number;
  readonly onGo: (step: number) => void;
}

/** How far hands and forearms kept from each unsterile thing, one small chart for each, all on the same scales. */
export function ClearancePanel({ head, trace, revision, onGo }: ClearancePanelProps) {
  const charts = useMemo(() => clearanceCharts(trace.clearances()), [trace, revision]);
  const near = charts.filter(({ least }) => least.metres < CLEARANCE_TOP_M);
  const far = charts.filter(({ least }) => least.metres >= CLEARANCE_TOP_M);
  return (
    <>
      <h2 class="panel-title">Clearance</h2>
      <p class="small">
        Closest approach of hand and forearm, 0 to {CLEARANCE_TOP_M * 100} cm, over the whole run. Whole line: right; dashed line: left. The lower line is touch, the dotted one {GUIDE_M * 100} cm.
      </p>
      {charts.length === 0 && <p>This run does not say how clear the hands kept.</p>}
      {near.map((chart) => (
        <Chart key={chart.thing} chart={chart} head={head} words={thingWords(chart.thing)} onGo={onGo} />
      ))}
      {far.length > 0 && <p class="small clearance-far">Never nearer than {CLEARANCE_TOP_M * 100} cm: {listed(far.map(({ thing }) => thingWords(thing)))}.</p>}
    </>
  );
}

const thingWords = (thing: string): string => THING_WORDS[thing as ClearanceThing] ?? thing;

function Chart({ chart, head, words, onGo }: { readonly chart: ClearanceChart; readonly head: PlayHead; readonly words: string; readonly onGo: (step: number) => void }) {
  const { least, series } = chart;
  const lines = useMemo(() => SIDES.map((side) => [side, series[side] ? clearancePath(series[side], head.end, WIDE, HIGH) : ''] as const), [chart]);
  const x = usePlayHead(head, ({ step, end }) => Math.round((step / Math.max(1, end)) * WIDE));
  const told = least.metres <= 0 ? `touched at ${momentText(least.step)}` : `nearest ${lengthText(least.metres)} at ${momentText(least.step)}`;
  return (
    <figure class="clearance">
      <figcaption>
        <span class="clearance-name">{capital(words)}</span>
        <button class={`link-button${least.metres <= 0 ? ' broken-words' : ''}`} onClick={() => onGo(least.step)}>
          {told}, {least.side}
        </button>
      </figcaption>
      <svg
        viewBox={`0 -2 ${WIDE} ${HIGH + 4}`}
        preserveAspectRatio="none"
        aria-hidden="true"
        focusable="false"
        onClick={(event) => {
          const box = event.currentTarget.getBoundingClientRect();
          onGo(Math.round(((event.clientX - box.left) / box.width) * head.end));
        }}
      >
        <rect class="clearance-ground" x={0} y={0} width={WIDE} height={HIGH} />
        <path class="clearance-guide" d={`M0 ${yOf(GUIDE_M, HIGH)}H${WIDE}`} />
        {lines.map(([side, path]) => (
          <path key={side} class={`clearance-line clearance-${side}`} d={path} />
        ))}
        <path class="clearance-touch" d={`M0 ${HIGH}H${WIDE}`} />
        <path class="clearance-now" d={`M${x} -2V${HIGH + 2}`} />
      </svg>
    </figure>
  );
}
