import { describe, expect, it } from 'vitest';
import { frameOf, type Frame, type Framing } from '../../../src/app/canvas/framing.ts';
import { LOADING, scenarioWith } from '../support/scenario.ts';

const shows = ({ left, right, bottom, top }: Frame, x: number, y: number): boolean => x > left && x < right && y > bottom && y < top;
const sees = (framing: Framing, scenario = LOADING): string[] => {
  const { kitTable, machine, bin, assistantXM } = scenario.room;
  const places = { sheath: [kitTable.xM - kitTable.widthM / 2, kitTable.topM], probe: [machine.xM - 0.2, 1.4], face: [assistantXM + 0.1, 1.6], site: [-0.05, 1.1], hanging: [0.16, 1.8], bin: [bin.xM, bin.rimM] } as const;
  return Object.entries(places).flatMap(([name, [x, y]]) => (shows(frameOf(framing, scenario), x, y) ? [name] : []));
};

describe('Framings', () => {
  it('show all that sheathing needs from the start, and the bin besides when asked wide', () => {
    expect(sees('work')).toEqual(['sheath', 'probe', 'face', 'site', 'hanging']);
    expect(sees('reach')).toEqual(['sheath', 'probe', 'face', 'site', 'hanging', 'bin']);
    expect(sees('field')).toEqual(['site', 'hanging']);
  });

  it('stay close to the field where the probe lies on it', () => {
    expect(sees('field', scenarioWith())).toEqual(['site']);
    expect(sees('work', scenarioWith())).toEqual(['sheath', 'site', 'bin']);
  });

  it('show machine and assistant on whichever side they stand', () => {
    const { room } = LOADING;
    const turned = { ...LOADING, room: { ...room, machine: { ...room.machine, xM: -1.15 }, kitTable: { ...room.kitTable, xM: 0.98 }, assistantXM: -1.65 } };
    const frame = frameOf('work', turned);
    for (const x of [-1.75, -1.36, 1.24]) expect(shows(frame, x, 1.6)).toBe(true);
  });
});
