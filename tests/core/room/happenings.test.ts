import { describe, expect, it } from 'vitest';
import { freshRun, runOperator, shippedScenario } from '../../support/runOperator.ts';

const withCue = (kind: string, amount = 1) =>
  shippedScenario('quiet-room', (source) => {
    source['cues'] = [{ atS: 0.5, kind, amount }];
  });

describe('The cord as it is laid', () => {
  it.each(['quiet-room', 'high-rails-short-sheath', 'restless-patient-head-down'] as const)('is as long as %s says, within 0.1 percent', (room) => {
    const run = freshRun(room);
    const { world, cord } = run.room.scene;
    const start = world.strandStart(cord);
    let length = 0;
    for (let i = start; i < start + world.strandSize(cord) - 1; i++) length += Math.hypot(world.x[i + 1]! - world.x[i]!, world.y[i + 1]! - world.y[i]!);
    expect(Math.abs(length / run.scenario.cord.lengthM - 1)).toBeLessThan(0.001);
  });
});

describe('Cues', () => {
  it('the patient turns by 3 cm and takes the glued edge of the drape along', () => {
    const run = freshRun(withCue('patientTurns'));
    const { world, drapes } = run.room.scene;
    const edge = world.strandStart(drapes.left);
    const before = world.x[edge]!;
    for (let k = 0; k < 360; k++) run.step([]);
    expect(Math.abs(run.room.happenings.humpX)).toBeCloseTo(0.03, 9);
    expect(world.x[edge]! - before).toBeCloseTo(run.room.happenings.humpX, 3);
    expect(run.result().handling.driftM.left).toBeLessThan(0.002);
    expect(run.breaks).toEqual([]);
  });

  it('a pulled cord is stopped by the clip: inside of it nothing moves', () => {
    const run = freshRun(withCue('cordPulled'));
    const { world, clip, cord } = run.room.scene;
    const start = world.strandStart(cord);
    const before = world.x.slice(start, clip!.cordNode - 2);
    for (let k = 0; k < 480; k++) run.step([]);
    expect(run.room.clip.closed).toBe(true);
    const moved = Math.max(...before.map((x, k) => Math.abs(world.x[start + k]! - x)));
    expect(moved).toBeLessThan(0.02);
  });

  it('an itch passes when the assistant wipes', () => {
    const { run } = runOperator((op) => {
      op.wait(1);
      expect(op.run.room.happenings.itches(op.run.stepCount)).toBe(true);
      op.send({ type: 'ask', request: 'wipeFace' }).wait(7);
    }, withCue('itch'));
    expect(run.room.happenings.itches(run.stepCount)).toBe(false);
  });
});
