import { readFileSync } from 'node:fs';
import { parseScenario } from '../../src/core/scenario/parseScenario.ts';
import { shippedScenario } from './runOperator.ts';
import type { Scenario } from '../../src/core/scenario/schema.ts';

export type GownRoom = 'gown-roomy' | 'gown-cramped' | 'gown-tall';

/** A shipped room for gowning; `change` alters the parts of its gown. */
export function gownRoom(room: GownRoom, change: Record<string, unknown> = {}): Scenario {
  const source = JSON.parse(readFileSync(new URL(`../../scenarios/${room}.json`, import.meta.url), 'utf8')) as { gown: Record<string, unknown> };
  const read = parseScenario(JSON.stringify({ ...source, gown: { ...source.gown, ...change } }));
  if (!read.ok) throw new Error(read.error.message);
  return read.value;
}

export const ROOMY = gownRoom('gown-roomy');
export const CRAMPED = gownRoom('gown-cramped');
export const TALL = gownRoom('gown-tall');
/** Gloves three half sizes too small. */
export const SMALL_GLOVES = gownRoom('gown-roomy', { gloveSizes: { left: 6.5, right: 6.5 } });
/** Gloves three half sizes too large. */
export const LARGE_GLOVES = gownRoom('gown-roomy', { gloveSizes: { left: 9, right: 9 } });
/** A gown much longer than the operator is tall. */
export const LONG_GOWN = gownRoom('gown-roomy', { lengthM: 1.5 });
/** A gown whose sleeves are too short for these arms. */
export const SHORT_SLEEVES = gownRoom('gown-roomy', { sleeveM: 0.7 });
/** Somebody comes close while the gown hangs open. */
export const PASSED_BY = gownRoom('gown-roomy', { passer: { atS: 13, fromXM: 0.6, toXM: -1.02 } });
/** Gloves half a size too small. */
export const TIGHT_GLOVES = gownRoom('gown-roomy', { gloveSizes: { left: 7, right: 7 } });
/** The quiet room at the bed, where gloves are changed by hand. */
export const BY_HAND_AT_BED = shippedScenario('quiet-room', (source) => (source['gown'] = { gloveChange: 'byHand' }));
