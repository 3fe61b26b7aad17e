import { describe, expect, it } from 'vitest';
import { parseScenario } from '../../../src/core/scenario/parseScenario.ts';
import type { Scenario } from '../../../src/core/scenario/schema.ts';
import { scenarioHash } from '../../../src/core/scenario/scenarioHash.ts';
import { shippedScenarios } from './shipped.ts';

const FILES = shippedScenarios();
const read = (name: string): Scenario => {
  const result = parseScenario(FILES[name]!);
  if (!result.ok) throw new Error(`${name}: ${result.error.message}`);
  return result.value;
};

describe('The shipped scenarios', () => {
  it('are the ten that the start page offers', () => {
    expect(Object.keys(FILES).sort()).toEqual(['gown-cramped', 'gown-roomy', 'gown-tall', 'harmless-or-not', 'high-rails-short-sheath', 'quiet-room', 'restless-patient-head-down', 'sheath-hurried', 'sheath-loose-clumsy', 'sheath-short']);
  });

  it.each(Object.keys(FILES))('%s can be opened, and bears the name of its file', (name) => {
    expect(read(name).id).toBe(name);
  });

  it.each(Object.keys(FILES))('%s foresees time enough after its last cue to go on and finish', (name) => {
    const { cues, minutes } = read(name);
    for (const cue of cues) expect(minutes * 60 - cue.atS).toBeGreaterThanOrEqual(60);
  });

  it('differ in content and in seed', () => {
    const all = Object.keys(FILES).map(read);
    expect(new Set(all.map(scenarioHash)).size).toBe(10);
    expect(new Set(all.map((one) => one.seed)).size).toBe(10);
  });
});

describe('What each of them is for', () => {
  it('in the quiet room nothing happens until one itch late in the run', () => {
    const { cues, minutes } = read('quiet-room');
    expect(cues.map((cue) => cue.kind)).toEqual(['itch']);
    expect(cues[0]!.atS).toBeGreaterThan((minutes * 60) / 2);
  });

  it('behind high bare rails, the sterile part of the cord does not reach the rail from the site', () => {
    const { room, cord, drape, policy } = read('high-rails-short-sheath');
    expect([drape.left.reach, drape.right.reach]).toEqual(['inside', 'inside']);
    expect(room.rails.right.topAboveMattressM).toBeGreaterThan(0.3);
    const across = room.rails.xM + room.patient.siteXM;
    const up = room.rails.right.topAboveMattressM - room.patient.heightM;
    expect(cord.coveredM - policy.sheathTailM).toBeLessThan(across + up + 0.1);
  });

  it('there the machine stands on the other side, and the table and the bin opposite', () => {
    const { room } = read('high-rails-short-sheath');
    expect(Math.max(room.machine.xM, room.machine.outletXM, room.assistantXM, room.pole.xM)).toBeLessThan(0);
    expect(Math.min(room.kitTable.xM, room.bin.xM)).toBeGreaterThan(0);
  });

  it('in the roomy gown room the rail between the field and its close kit table is down, and three stations have time', () => {
    const { room, followedBy, minutes } = read('gown-roomy');
    expect(-room.rails.xM - (room.kitTable.xM + room.kitTable.widthM / 2)).toBeLessThan(0.1);
    expect([room.rails.right.up, room.rails.left.up, followedBy]).toEqual([false, true, ['sheath', 'field']]);
    expect(minutes).toBeGreaterThanOrEqual(10);
  });

  it('the restless patient turns and coughs under a drape that sticks poorly, head down', () => {
    const { cues, drape, room } = read('restless-patient-head-down');
    expect(new Set(cues.map((cue) => cue.kind))).toEqual(new Set(['cough', 'patientTurns', 'itch']));
    expect(drape.left.peelNPerM).toBeLessThan(60);
    expect(room.bed.headDownDeg).toBe(15);
  });

  it('in the drill of noticing everything that happens is a look-alike, each with a window of its own', () => {
    const { cues, noticing } = read('harmless-or-not');
    expect(cues.filter(({ lookAlike }) => lookAlike).length).toBeGreaterThanOrEqual(3);
    expect(cues.every(({ lookAlike }) => lookAlike)).toBe(true);
    expect(new Set(cues.map(({ kind }) => kind)).size).toBe(3);
    expect(noticing.windowS).toBe(10);
  });

  it('the sheaths are of lengths that kits have (91 to 150 cm, common practice); one is loose, and its assistant clumsy', () => {
    const sheaths = Object.keys(FILES).filter((name) => name.startsWith('sheath-')).map(read);
    expect(sheaths.map(({ station }) => station)).toEqual(['sheath', 'sheath', 'sheath']);
    for (const { sheath } of sheaths) {
      expect(sheath.lengthM).toBeGreaterThanOrEqual(0.91);
      expect(sheath.lengthM).toBeLessThanOrEqual(1.5);
    }
    expect(sheaths.filter(({ sheath }) => sheath.form === 'loose').map(({ assistant }) => assistant.skill < 0.5)).toEqual([true]);
  });

  it('the hurried assistant lets go without the word, and has a packet left to open', () => {
    const { assistant, items } = read('sheath-hurried');
    expect(assistant.letsGoAfterS).toBeGreaterThan(0);
    expect(items.filter(({ spare }) => spare)).toHaveLength(1);
  });

  it('nowhere else is a happening called harmless', () => {
    for (const name of Object.keys(FILES).filter((one) => one !== 'harmless-or-not')) expect(read(name).cues.some(({ lookAlike }) => lookAlike)).toBe(false);
  });
});
