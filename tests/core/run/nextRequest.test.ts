import { describe, expect, it } from 'vitest';
import type { RequestId } from '../../../src/core/commands/command.ts';
import type { Scenario } from '../../../src/core/scenario/schema.ts';
import { ROOMY } from '../../support/gownRooms.ts';
import { GownToNeedle } from '../../support/gownToNeedle.ts';
import { GownWork } from '../../support/gownWork.ts';
import { Loading } from '../../support/loading.ts';
import { PromptedOperator } from '../../support/promptedOperator.ts';
import { freshRun, type ShippedRoom } from '../../support/runOperator.ts';
import { WholeProcedure } from '../../support/wholeProcedure.ts';

/** A run of 40,000 steps; a busy machine may need long for it (ms). */
const PATIENCE_MS = 600_000;

const GOWN: readonly RequestId[] = ['tieBack', 'takeCard'];
const SHEATH: readonly RequestId[] = ['bringProbe', 'lower', 'letGo', 'pullTail'];

/** Each station by itself and all in a row, as a careful operator does it, with all that is asked of the assistant. */
const RUNS: readonly (readonly [string, ShippedRoom | Scenario, readonly RequestId[], (op: PromptedOperator) => unknown])[] = [
  ['gown and gloves', ROOMY, GOWN, (op) => new GownWork(op).gowned().glove('right').glove('left').card()],
  ['sheathing', 'sheath-short', SHEATH, (op) => new Loading(op).all()],
  ['the field', 'quiet-room', [], (op) => new WholeProcedure(op).all()],
  ['the field where no clip holds the cord', 'high-rails-short-sheath', ['takeCord'], (op) => new WholeProcedure(op).all()],
  ['all stations in a row', ROOMY, [...GOWN, ...SHEATH], (op) => new GownToNeedle(op).all()],
];

describe('The next request to the assistant', () => {
  it.each(RUNS)('in %s is the one that a careful operator then sends, and none else falls due', (_, room, requests, play) => {
    const op = new PromptedOperator(freshRun(room));
    play(op);
    expect(op.run.breaks).toEqual([]);
    expect(op.asked).toEqual(requests.map((request) => ({ request, told: request })));
    expect(op.due).toEqual(requests);
    expect(op.dueNow).toBeNull();
  }, PATIENCE_MS);
});
