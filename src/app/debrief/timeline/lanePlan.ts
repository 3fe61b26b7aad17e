import { labelSides, packRows, type Lane, type LaneMark } from './lanes.ts';
import { xOf, type TimeScale } from './timeScale.ts';

const LANE_PX = 21;
/** Height of one row of spans, and most rows of one lane. */
const ROW_PX = 12;
const ROWS_MAX = 3;
/** Width of a letter on the timeline on average. */
const LETTER_PX = 6.9;
const TOP_PX = 18;
const AXIS_PX = 22;

/** A mark with its place on the screen. */
export interface PlannedMark {
  readonly mark: LaneMark;
  readonly x: number;
  readonly toX: number;
  readonly y: number;
  readonly label: 'right' | 'left' | null;
}

export interface PlannedLane {
  readonly name: string;
  /** Middle of its first row. */
  readonly y: number;
  readonly marks: readonly PlannedMark[];
}

/** Where everything on the timeline is, in CSS pixels from its upper left corner. */
export interface LanePlan {
  readonly touchesY: number;
  readonly lanes: readonly PlannedLane[];
  readonly followY: number | null;
  readonly axisY: number;
  readonly height: number;
}

export function lanePlan(lanes: readonly Lane[], scale: TimeScale, follows: boolean): LanePlan {
  const px = (step: number): number => xOf(scale, Math.min(Math.max(step, scale.from - (scale.to - scale.from)), scale.to + (scale.to - scale.from)));
  let y = TOP_PX + LANE_PX / 2;
  const touchesY = y;
  y += LANE_PX;
  const planned = lanes.map((lane): PlannedLane => {
    const seen = lane.marks.filter(({ step, toStep }) => toStep >= scale.from && step <= scale.to);
    const rows = lane.name === 'breaks' ? packRows(seen, ROWS_MAX) : seen.map(() => 0);
    const sides = labelSides(seen, px, (words) => words.length * LETTER_PX, [scale.left - 6, scale.right + 20]);
    const at = y;
    y += Math.max(LANE_PX, (Math.max(0, ...rows) + 1) * ROW_PX + 7);
    return { name: lane.name, y: at, marks: seen.map((mark, k) => ({ mark, x: px(mark.step), toX: px(mark.toStep), y: at + rows[k]! * ROW_PX, label: sides[k]! })) };
  });
  const followY = follows ? y : null;
  const axisY = y + (follows ? LANE_PX / 2 + 1 : -LANE_PX / 2 + 2);
  return { touchesY, lanes: planned, followY, axisY, height: axisY + AXIS_PX };
}

const CATCH_PX = 9;

/** The mark under a point, or null; a span is taken at its beginning or along its bar. */
export function markUnder(plan: LanePlan, x: number, y: number): LaneMark | null {
  let found: LaneMark | null = null;
  let least = Infinity;
  for (const { marks } of plan.lanes) {
    for (const { mark, x: from, toX, y: middle } of marks) {
      const beside = Math.max(from - x, mark.kind === 'break' ? x - toX : x - Math.max(from, toX), 0);
      const off = Math.hypot(beside, Math.max(0, Math.abs(y - middle) - 4));
      if (off < CATCH_PX && off < least) [found, least] = [mark, off];
    }
  }
  return found;
}
