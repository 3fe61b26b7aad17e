import { SIDES, type Side } from '../base/side.ts';
import type { HandlingMeasures, RunResult } from '../run/result.ts';
import type { Scenario } from '../scenario/schema.ts';
import { type Earned, weighed } from './procedurePart.ts';
import { clamped, hundredths } from './round.ts';
import type { EventRef, ScorePart } from './score.ts';
import { CLEARANCE_NAMES, ITEM_NAMES } from './words.ts';

/** Closest passes that are named. */
const CLOSEST = 3;
/** What hands are meant to come near to: no praise for keeping away from it. */
const MEANT = 'bin';

/** How the hands moved. The numbers tell something to those who know the room; few of them bring points. */
export function handlingPart(result: RunResult, scenario: Scenario, worked: number): ScorePart {
  const { measured } = result.handling;
  const lines = [...(measured ? [clearance(measured, scenario)] : []), drift(result, scenario), drops(result, scenario), ...smoothness(measured, scenario), ...paths(result)];
  return weighed('handling', 'How your hands moved', scenario.rubric.points.handling, lines, worked);
}

const centimetres = (metres: number): number => Math.round(metres * 1000) / 10;

function clearance({ clearance: kept }: HandlingMeasures, { rubric: { handling } }: Scenario): Earned {
  const near = kept.filter(({ thing }) => thing !== MEANT).sort((a, b) => a.metres - b.metres || a.step - b.step);
  const least = near[0];
  const events = near.slice(0, CLOSEST).map(({ hand, thing, metres, step }): EventRef => ({ kind: 'clearance', step, words: `${hand} hand ${metres === 0 ? 'on' : `${centimetres(metres)} cm from`} ${CLEARANCE_NAMES[thing]}` }));
  const line = { id: 'clearance', words: 'Least gap to anything unsterile', value: least ? centimetres(least.metres) : null, unit: 'cm', events };
  return { line, weight: handling.clearance, share: least ? clamped(least.metres / handling.clearM) : 1 };
}

function drift({ handling: { driftM, measured } }: RunResult, { rubric: { handling } }: Scenario): Earned {
  const farthest = Math.max(driftM.left, driftM.right);
  const events = SIDES.flatMap((side): EventRef[] => {
    const step = measured?.driftStep[side] ?? null;
    return step === null || driftM[side] === 0 ? [] : [{ kind: 'drift', step, words: `drape, ${side} side, ${centimetres(driftM[side])} cm from where it was laid` }];
  });
  return { line: { id: 'drift', words: 'Farthest that the drape slid', value: centimetres(farthest), unit: 'cm', events }, weight: handling.drift, share: clamped(1 - farthest / handling.driftM) };
}

function drops({ handling: { dropped, measured } }: RunResult, { items, rubric: { handling } }: Scenario): Earned {
  const name = (id: string): string => ITEM_NAMES[items.find((item) => item.id === id)?.kind ?? 'probe'];
  const events = (measured?.drops ?? []).map(({ thing, step }, k): EventRef => ({ kind: 'drop', step, number: k + 1, words: `${name(thing)} fell off the field` }));
  const count = measured ? measured.drops.length : dropped.length;
  return { line: { id: 'drops', words: 'Things dropped', value: count, unit: '', events }, weight: handling.drops, share: clamped(1 - count * handling.dropShare) };
}

function smoothness(measured: HandlingMeasures | null, { rubric: { handling } }: Scenario): Earned[] {
  const { smoothness: weight, smoothAll, smoothNone } = handling;
  return SIDES.map((side) => {
    const of = measured?.smoothness[side];
    const value = of?.median ?? null;
    const events = (of?.roughest ?? []).map(({ step, value: rough }): EventRef => ({ kind: 'movement', step, words: `one of the least smooth movements of the ${side} hand: ${String(rough).replace('-', '−')}` }));
    const line = { id: `smoothness.${side}`, words: `Smoothness, ${side} hand (log dimensionless jerk: about −6.6 for the smoothest reach, lower where it jerks)`, value, unit: '', events };
    return { line, weight: value === null ? 0 : weight / 2, share: value === null ? 0 : smoothShare(value, smoothAll, smoothNone) };
  });
}

const smoothShare = (value: number, all: number, none: number): number => (all > none ? clamped((value - none) / (all - none)) : Number(value >= all));

const paths = ({ handling: { pathM } }: RunResult): Earned[] =>
  SIDES.map((side: Side) => ({ line: { id: `path.${side}`, words: `Way of the ${side} hand`, value: hundredths(pathM[side]), unit: 'm', events: [] }, weight: 0, share: 0 }));
