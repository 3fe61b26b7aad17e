import { beforeAll, describe, expect, it } from 'vitest';
import { DebriefOfRun } from '../../../src/core/debrief/DebriefOfRun.ts';
import { SAMPLE_STEPS } from '../../../src/core/debrief/traceChunk.ts';
import { traceRun, type TraceNews } from '../../../src/core/debrief/traceRun.ts';
import type { RunFile } from '../../../src/core/recording/recording.ts';
import type { Run } from '../../../src/core/run/run.ts';
import { QUICK_REMEDIES } from '../../support/rooms.ts';
import { freshRun } from '../../support/runOperator.ts';
import { BRIEF_STEPS, tracedRun, WHOLE_STEPS, type Shown } from './tracedRun.ts';

/** Half a unit of what is kept (0.1 mm), and what blending adds in the last digits. */
const CLOSE = 0.00005 + 1e-9;
/** Directions are made unit vectors again. */
const CLOSE_DIRECTION = 0.00012;

let file: RunFile;
let brief: RunFile;
let shown: readonly Shown[];
let news: TraceNews[];
let debrief: DebriefOfRun;

const makeRun = (): Run => freshRun(QUICK_REMEDIES);
const played = (recording: RunFile): DebriefOfRun => {
  const result = new DebriefOfRun(recording, () => {});
  for (const one of traceRun(recording, makeRun)) result.take(structuredClone(one));
  result.end();
  return result;
};

beforeAll(() => {
  brief = tracedRun(BRIEF_STEPS).file;
  ({ file, shown } = tracedRun());
  news = structuredClone([...traceRun(file, makeRun)]);
  debrief = new DebriefOfRun(file, () => {});
  for (const one of news) debrief.take(structuredClone(one));
  debrief.end();
}, 300_000);

/** Every number of two pictures that differs by more than it may, and everything else that differs, by path. */
function differences(a: unknown, b: unknown, path = ''): string[] {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= (/\.[cs]$/.test(path) ? CLOSE_DIRECTION : CLOSE) ? [] : [`${path}: ${a} ${b}`];
  if (typeof a !== 'object' || a === null || typeof b !== 'object' || b === null) return a === b ? [] : [`${path}: ${String(a)} ${String(b)}`];
  if (a instanceof Map || b instanceof Map) return [];
  const fields = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...fields].flatMap((field) => differences((a as never)[field], (b as never)[field], `${path}.${field}`));
}

const LAST = WHOLE_STEPS - 1;

describe('The trace of a run', () => {
  it('shows at every sample what the run showed, within 0.05 mm', () => {
    expect(debrief.trace.lastStep).toBe(LAST);
    for (const step of [...Array.from({ length: Math.floor(LAST / SAMPLE_STEPS) + 1 }, (_, k) => k * SAMPLE_STEPS), LAST]) {
      expect(differences(debrief.trace.pictureAt(step), shown[step]!.picture), `step ${step}`).toEqual([]);
    }
  });

  it('marks are exact at every step, also between samples, and the very same map while none changes', () => {
    const maps = new Set<unknown>();
    shown.forEach(({ marks }, step) => {
      expect(debrief.trace.pictureAt(step).marks, `step ${step}`).toEqual(marks);
      maps.add(debrief.trace.marksAt(step));
    });
    expect([...shown[LAST]!.marks.values()], 'something was spoiled').toContain('became');
    expect(maps.size).toBeLessThan(shown.length / 2);
  });

  it('moves on between two samples', () => {
    const step = Array.from({ length: 90 }, (_, k) => k * SAMPLE_STEPS).find((at) => Math.abs(shown[at]!.picture.hands.left.x - shown[at + SAMPLE_STEPS]!.picture.hands.left.x) > 0.002)!;
    const [a, b] = [debrief.trace.pictureAt(step).hands.left, debrief.trace.pictureAt(step + SAMPLE_STEPS).hands.left];
    expect(Math.abs(a.x - b.x) + Math.abs(a.y - b.y)).toBeGreaterThan(0.001);
    const between = debrief.trace.pictureAt(step + 1).hands.left;
    expect(between.x).toBeCloseTo(a.x + (b.x - a.x) / 4, 9);
    expect(between.c * between.c + between.s * between.s).toBeCloseTo(1, 12);
    expect(debrief.trace.pictureAt(step + 0.5).hands.left.x).toBeCloseTo(a.x + (b.x - a.x) / 8, 9);
  });

  it('stays within a centimetre of the run between samples, also when a hand is stopped short', () => {
    let worst = 0;
    shown.forEach(({ picture }, step) => {
      const { hands } = debrief.trace.pictureAt(step);
      for (const side of ['left', 'right'] as const) worst = Math.max(worst, Math.abs(hands[side].x - picture.hands[side].x), Math.abs(hands[side].y - picture.hands[side].y));
    });
    expect(worst).toBeLessThan(0.01);
  });

  it('shows the new glove from its sample on', () => {
    const surfaces = [...new Set(Array.from({ length: LAST }, (_, step) => debrief.trace.pictureAt(step).hands.left.surfaces.palm))];
    expect(surfaces).toEqual(['glove.left#1:palm', 'glove.left#2:palm']);
  });

  it('is clamped to what there is', () => {
    expect(debrief.trace.pictureAt(-50).step).toBe(1);
    expect(debrief.trace.pictureAt(1e9).step).toBe(LAST + 1);
  });

  it('keeps what does not change from picture to picture', () => {
    const [a, b] = [debrief.trace.pictureAt(900), debrief.trace.pictureAt(902)];
    expect(b.patientOutline).toBe(a.patientOutline);
    expect(b.strands[0]!.surfaces).toBe(a.strands[0]!.surfaces);
    expect(b.fixed).toBe(a.fixed);
  });

  it('has the clearances that the run measured', () => {
    const series = debrief.trace.clearances();
    expect(series.length).toBe(26);
    let near = 0;
    for (const { side, thing, steps, metres } of series) {
      steps.forEach((step, k) => {
        const measured = shown[step]!.clearances[side][thing];
        if (measured === Infinity) expect(metres[k]).toBe(Infinity);
        else expect(Math.abs(metres[k]! - measured)).toBeLessThanOrEqual(CLOSE);
        if (measured < 0.3) near++;
      });
    }
    expect(near).toBeGreaterThan(100);
  });

  it('has the ways of the hands, whole or in part', () => {
    const path = debrief.trace.handPath('right');
    expect(path.steps.length).toBe(Math.floor(LAST / SAMPLE_STEPS) + 2);
    path.steps.forEach((step, k) => expect(Math.abs(path.x[k]! - shown[step]!.picture.hands.right.x) + Math.abs(path.y[k]! - shown[step]!.picture.hands.right.y)).toBeLessThan(2 * CLOSE));
    expect([...debrief.trace.handPath('right', 10, 20).steps]).toEqual([12, 16, 20]);
    expect(debrief.trace.heatMap('right').seconds.reduce((sum, s) => sum + s, 0)).toBeCloseTo(LAST / 120, 9);
  });
});

describe('What comes of it', () => {
  it('is the log and the result of the run, bit for bit, and the recording is verified', () => {
    expect(debrief.verification).toEqual({ verdict: 'verified' });
    expect(debrief.log!.result).toEqual(file.result);
    expect([debrief.log!.steps, debrief.log!.complete, debrief.share, debrief.exact, debrief.fault]).toEqual([file.steps, true, 1, true, null]);
  });

  it('comes in pieces of two seconds, each of which can be shown at once', () => {
    const growing = new DebriefOfRun(file, () => {});
    const seen: number[] = [];
    growing.onGrow(() => seen.push(growing.trace.lastStep));
    expect(growing.trace.lastStep).toBe(-1);
    growing.take(structuredClone(news[0]!));
    expect(growing.trace.pictureAt(100).step).toBe(101);
    expect(growing.log!.steps).toBe(237);
    expect([growing.verification, growing.log!.complete]).toEqual([null, false]);
    for (const one of news.slice(1)) growing.take(structuredClone(one));
    growing.end();
    expect(seen).toEqual([236, 476, 716, 956, LAST, LAST]);
    expect(growing.log!.facts).toEqual(debrief.log!.facts);
  });

  it('tells nobody any more once it is stopped, and stops the work once', () => {
    let stops = 0;
    let told = 0;
    const stopped = new DebriefOfRun(file, () => stops++);
    const off = stopped.onGrow(() => told++);
    stopped.take(structuredClone(news[0]!));
    off();
    stopped.take(structuredClone(news[1]!));
    stopped.onGrow(() => told++);
    stopped.stop();
    stopped.stop();
    stopped.take(structuredClone(news[2]!));
    stopped.fail('Too late.');
    expect([stops, told, stopped.fault]).toEqual([1, 1, null]);
  });

  it('says at once where a recording diverges, and goes on showing it', () => {
    const hashes = brief.hashes.map((hash, k) => (k === 1 ? '0'.repeat(16) : hash));
    const seen = [...traceRun({ ...brief, hashes }, makeRun)];
    expect(seen.map(({ verification }) => verification)).toEqual([null, { verdict: 'diverged', firstDivergentStep: 240 }]);
    expect(seen.at(-1)!.chunk!.steps).toBe(brief.steps);
  });

  it('says when the written result is another', () => {
    const wrong = played({ ...brief, result: { ...brief.result!, steps: 1 } });
    expect(wrong.verification).toMatchObject({ verdict: 'resultDiffers' });
  });

  it('a run that was broken off has what there is', () => {
    const half = played({ ...brief, steps: 150, hashes: brief.hashes.slice(0, 1), result: null, commands: brief.commands.filter(({ step }) => step < 150) });
    expect([half.verification, half.trace.lastStep, half.log!.steps]).toEqual([{ verdict: 'brokenOff', steps: 150 }, 149, 150]);
  });

  it('a run of another version is played as this version does it, and says so', () => {
    const other = played({ ...brief, header: { ...brief.header, simulation: 0 } });
    expect([other.exact, other.verification, other.trace.lastStep]).toEqual([false, { verdict: 'otherSimulation', simulation: 0 }, BRIEF_STEPS - 1]);
  });

  it('a run that breaks down shows what there was and says so', () => {
    const broken = new DebriefOfRun(brief, () => {});
    const fragile = (): Run => {
      const run = freshRun(QUICK_REMEDIES);
      return new Proxy(run, {
        get(target, name) {
          if (name === 'step' && target.stepCount === 238) return () => { throw new Error('the floor gave way'); };
          const value: unknown = Reflect.get(target, name, target);
          return typeof value === 'function' ? value.bind(target) : value;
        },
      });
    };
    for (const one of traceRun(brief, fragile)) broken.take(structuredClone(one));
    broken.end();
    expect(broken.fault).toBe('The run could be played no further: the floor gave way.');
    expect([broken.trace.lastStep, broken.log!.complete]).toEqual([236, true]);
  });
});
