import { describe, expect, it } from 'vitest';
import { Run } from '../../../src/core/run/run.ts';
import type { Operator, SentCommand } from '../../support/operator.ts';
import { freshRun, runOperator } from '../../support/runOperator.ts';

/** Takes the gel in one hand and the sheet in the other, breaks a rule, and asks for a remedy that waits. */
function busy(op: Operator): void {
  op.turn('right', -40).take('right', 'gel').palmTo('right', -0.2, 1.25);
  op.palmTo('left', 0.16, 1.3).turn('left', -50).fingersTo('left', 0.12, 1.08, 0.1).grip('left');
  expect([op.holds('right'), op.holds('left')]).toEqual(['gel', 'drape.left']);
  op.fingersTo('left', 0.12, 1.12, 0.1).send({ type: 'remedy.start', remedy: 'coverDrape', thing: 'left' }).wait(0.2);
}

/** Plays commands by step until `steps` are done, from where the run is. */
function play(run: Run, commands: readonly SentCommand[], steps: number): void {
  while (run.stepCount < steps) run.step(commands.filter(({ step }) => step === run.stepCount).map(({ command }) => command));
}

const goOn = (run: Run): string[] => {
  const hashes: string[] = [];
  for (let k = 0; k < 600; k++) {
    const hand = k % 200 < 100 ? 'left' : 'right';
    run.step(k % 4 === 0 ? [{ type: 'hand.move', hand, xMm: hand === 'left' ? 150 + (k % 100) : -200 - (k % 100), yMm: 1200 + (k % 50) }] : k === 301 ? [{ type: 'hand.release', hand: 'right' }] : []);
    if (k % 50 === 49) hashes.push(run.hash());
  }
  return hashes;
};

describe('A run', () => {
  it('of the same commands has the same bits, also when built anew', () => {
    const { run, commands } = runOperator(busy);
    const steps = run.stepCount;
    const hash = run.hash();
    const again = new Run(run.scenario);
    play(again, commands, steps);
    expect(again.hash()).toBe(hash);
    expect(again.result()).toEqual(run.result());
  });

  it('goes on bit for bit from a snapshot with both hands holding, in itself and in a run built anew', () => {
    const { run } = runOperator(busy);
    const saved = structuredClone(run.snapshot());
    const hashes = goOn(run);
    const result = run.result();
    run.restore(structuredClone(saved));
    expect(goOn(run)).toEqual(hashes);
    const fresh = new Run(run.scenario);
    fresh.restore(saved);
    expect(goOn(fresh)).toEqual(hashes);
    expect(fresh.result()).toEqual(result);
  });

  it('is not changed by what goes on after its snapshot was taken', () => {
    const { run } = runOperator(busy);
    const saved = run.snapshot();
    const before = JSON.stringify(saved.parts['room']);
    goOn(run);
    expect(JSON.stringify(saved.parts['room'])).toBe(before);
  });

  it('says what it came to in plain JSON', () => {
    const { result } = runOperator((op) => op.palmTo('right', -0.25, 1.5).touch('right', 0.6, 0.8, () => op.near.gap('glove.right', 'face')).finish());
    expect(result.breaks.length).toBe(1);
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });

  it('set back to its start is as it was', () => {
    const run = freshRun();
    const hash = run.hash();
    runOperator(busy);
    expect(freshRun().hash()).toBe(hash);
  });
});
