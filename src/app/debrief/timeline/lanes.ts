import type { NearMiss, Timeline } from '../../../core/debrief/timelineTypes.ts';
import type { StateInterval } from '../../../core/debrief/followTypes.ts';
import { capital } from '../../parts/sentence.ts';
import { TASK_SENTENCES, TASK_WORDS } from '../../run/words.ts';
import { momentText } from '../timeText.ts';

export type MarkKind = 'break' | 'nearMiss' | 'notice' | 'remedy' | 'cue' | 'task';

/** One event on a lane of the timeline. */
export interface LaneMark {
  readonly kind: MarkKind;
  readonly step: number;
  readonly toStep: number;
  /** Short words beside the mark; may be left out where there is no room. */
  readonly label: string;
  /** The event in one sentence. */
  readonly sentence: string;
  /** It tells of something that went wrong. */
  readonly bad: boolean;
  /** Number of a break, or 0. */
  readonly breakNumber: number;
}

export interface Lane {
  readonly name: string;
  readonly marks: readonly LaneMark[];
}

/** Lanes under the touches, in the order in which they are drawn. */
export function lanesOf(timeline: Timeline, nearMisses: readonly NearMiss[]): readonly Lane[] {
  const mark = (kind: MarkKind, step: number, label: string, sentence: string, more: Partial<LaneMark> = {}): LaneMark => ({ kind, step, toStep: step, label, sentence, bad: false, breakNumber: 0, ...more });
  return [
    {
      name: 'breaks',
      marks: timeline.breaks.map((span) => mark('break', span.fromStep, '', `Break ${span.number}, ${span.severity}: ${span.words.replace(/\.$/, '')}${span.open ? ', not remedied' : `, until ${momentText(span.toStep)}`}`, { toStep: span.toStep, bad: true, breakNumber: span.number })),
    },
    {
      name: 'near misses',
      marks: nearMisses.map(({ step, side, words, metres }) => mark('nearMiss', step, '', `Near miss: ${side} hand or sleeve ${Math.max(1, Math.round(metres * 1000))} mm from the ${words}`)),
    },
    {
      name: 'notices',
      marks: timeline.notices.map(({ step, words, late, breaks }) => mark('notice', step, words, `You said that sterility was broken: ${words}`, { bad: late, breakNumber: breaks[0] ?? 0 })),
    },
    {
      name: 'remedies',
      marks: timeline.remedies.map(({ fromStep, toStep, words, breaks }) => mark('remedy', fromStep, words, `Remedy: ${words}`, { toStep, breakNumber: breaks[0] ?? 0 })),
    },
    { name: 'cues', marks: timeline.cues.map(({ step, kind, words }) => mark('cue', step, CUE_LABELS[kind] ?? kind, capital(words))) },
    {
      name: 'tasks',
      marks: timeline.tasks.map(({ step, task, outOfOrder }) => mark('task', step, TASK_WORDS[task], `Done: ${TASK_SENTENCES[task]}${outOfOrder ? ', out of order' : ''}`, { bad: outOfOrder })),
    },
  ];
}

const CUE_LABELS: Readonly<Record<string, string>> = { patientTurns: 'patient moves', cough: 'cough', cordPulled: 'cord pulled', itch: 'itch', assistantSpeaks: 'assistant speaks' };

/** Rows for spans that last at the same time, so that each is seen; what finds none lies in the last. */
export function packRows(spans: readonly { readonly step: number; readonly toStep: number }[], rowsMax: number): readonly number[] {
  const ends: number[] = [];
  return spans.map(({ step, toStep }) => {
    let row = ends.findIndex((end) => end <= step);
    if (row < 0) row = Math.min(ends.length, rowsMax - 1);
    ends[row] = Math.max(ends[row] ?? 0, toStep + 1);
    return row;
  });
}

/** Side of each mark on which its words have room, or null. `px` gives pixels of steps, `wide` of words. */
export function labelSides(marks: readonly LaneMark[], px: (step: number) => number, wide: (words: string) => number, [left, right]: readonly [number, number]): readonly ('right' | 'left' | null)[] {
  const half = 9;
  let free = left;
  return marks.map((mark, k) => {
    const room = wide(mark.label) + half + 4;
    const begin = px(mark.step) - half;
    const end = px(mark.toStep) + half;
    const next = k + 1 < marks.length ? px(marks[k + 1]!.step) - half : right;
    const before = mark.label !== '' && end + room > next && begin - room >= free;
    const fits = mark.label !== '' && end + room <= next;
    free = fits ? end + room : end;
    return fits ? 'right' : before ? 'left' : null;
  });
}

/** Touches of hands and arms by pixel column: how many began there. */
export function touchColumns(touches: Timeline['touches'], px: (step: number) => number, from: number, to: number): { readonly x: number; readonly count: number }[] {
  const columns = new Map<number, number>();
  for (const { fromStep, side } of touches) {
    if (side === null || fromStep < from || fromStep > to) continue;
    const x = column(px(fromStep));
    columns.set(x, (columns.get(x) ?? 0) + 1);
  }
  return [...columns].map(([x, count]) => ({ x, count }));
}

/** Pixel columns of the steps at which something became unsterile by a touch. */
export const spoilingColumns = (steps: readonly number[], px: (step: number) => number, from: number, to: number): number[] => [...new Set(steps.filter((step) => step >= from && step <= to).map((step) => column(px(step))))];

/** Strokes stand at least this far apart, in CSS pixels. */
const COLUMN_PX = 3;
const column = (x: number): number => Math.round(x / COLUMN_PX) * COLUMN_PX;

/** The state of what is followed, in words for one instant. */
export function stateWords(intervals: readonly StateInterval[], step: number): string {
  const now = intervals.find(({ fromStep, toStep }) => step >= fromStep && step < toStep) ?? intervals.at(-1);
  return now === undefined ? '' : STATE_WORDS[now.mark];
}

const STATE_WORDS = { sterile: 'sterile', unsterile: 'unsterile', became: 'became unsterile', prepared: 'prepared' } as const;
