import { describe, expect, it } from 'vitest';
import { levelAt } from '../../../src/core/room/level.ts';
import { Run } from '../../../src/core/run/run.ts';
import { shippedScenario } from '../../support/runOperator.ts';

const scenario = shippedScenario('quiet-room');

describe('Pictures of one room', () => {
  const [watched, other] = [new Run(scenario), new Run(scenario)];

  it('take over what is as in the picture before, as the very same objects', () => {
    watched.step([]);
    const before = watched.picture();
    watched.step([{ type: 'hand.move', hand: 'right', xMm: -260, yMm: 1290 }]);
    watched.step([]);
    const after = watched.picture();
    expect(after.hands.right.y).not.toBe(before.hands.right.y);
    expect(after.strands[0]).toBe(before.strands[0]);
    expect(after.items[1]).toBe(before.items[1]);
    expect(after.levelY).toBe(before.levelY);
    expect(after.patientOutline).toBe(before.patientOutline);
    expect(after.fixed).toBe(before.fixed);
  });

  it('show the same as those of a run that was set to that step', () => {
    for (let step = 0; step < 240; step++) {
      const commands = step === 0 ? [{ type: 'hand.move', hand: 'left', xMm: 300, yMm: 1020 } as const, { type: 'hand.grip', hand: 'right' } as const] : [];
      watched.step(commands);
      if (step % 20 !== 19) continue;
      const seen = watched.picture();
      other.restore(structuredClone(watched.snapshot()));
      expect({ ...other.picture(), marks: null }).toEqual({ ...seen, marks: null });
      for (let k = 0; k < seen.levelX.length; k++) expect(seen.levelY[k]).toBe(levelAt(watched.room.scene, watched.room.happenings.humpX, seen.levelX[k]!));
    }
  });
});
