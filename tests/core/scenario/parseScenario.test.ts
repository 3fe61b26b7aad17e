import { describe, expect, it } from 'vitest';
import { parseScenario, readScenario } from '../../../src/core/scenario/parseScenario.ts';
import { fileWith, LEAST, sourceWith } from './source.ts';

const taken = (text: string) => {
  const result = parseScenario(text);
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
};
const refused = (text: string) => {
  const result = parseScenario(text);
  if (result.ok) throw new Error('the file was taken');
  return result.error;
};

describe('A scenario file', () => {
  it('needs its header, a title, a summary and a seed; the rest has defaults', () => {
    const scenario = taken(JSON.stringify(LEAST));
    expect(scenario.room.rails.xM).toBe(0.49);
    expect(scenario.items.map((item) => item.id)).toEqual(['gel', 'anaesthetic', 'needle', 'gauze']);
    expect(scenario.cues).toEqual([]);
  });

  it('keeps what the author wrote, to the last digit', () => {
    const scenario = taken(fileWith({ 'room.rails.left.topAboveMattressM': 0.30000000000000004, rulesOff: ['anything'] }));
    expect(scenario.room.rails.left.topAboveMattressM).toBe(0.30000000000000004);
    expect(scenario.room.rails.right.topAboveMattressM).toBe(0.3);
    expect(scenario.rulesOff).toEqual(['anything']);
  });

  it('may begin with the mark that some editors put in front', () => {
    expect(taken(`\ufeff${fileWith({})}`).id).toBe('least');
  });

  it('gives a value that nothing can change', () => {
    const scenario = taken(fileWith({ cues: [{ atS: 5, kind: 'itch' }] }));
    expect(() => Object.assign(scenario.room.rails.left, { up: false })).toThrow(TypeError);
    expect(() => (scenario.items as unknown[]).push({})).toThrow(TypeError);
    expect(() => Object.assign(scenario.cues[0]!, { atS: 6 })).toThrow(TypeError);
  });

  it('may come as a value from inside another file, which is left alone', () => {
    const source = sourceWith({ minutes: 3 });
    const result = readScenario(source);
    expect(result.ok && result.value.minutes).toBe(3);
    expect(Object.isFrozen(source)).toBe(false);
  });

  it('does not have its rules judged when no rule book is at hand', () => {
    expect(parseScenario(fileWith({ rulesOff: ['nothing-known'] })).ok).toBe(true);
    expect(parseScenario(fileWith({ rulesOff: ['nothing-known'] }), { ruleIds: [] }).ok).toBe(false);
  });
});

describe('The order of reading', () => {
  it('asks for the header before anything else', () => {
    expect(refused('{ "rubbish": true }').kind).toBe('notAScenario');
  });

  it('refuses a newer version before it judges a shape that it cannot know', () => {
    expect(refused(fileWith({ version: 2, title: 5, nonsense: true })).kind).toBe('tooNew');
  });

  it('judges the fields before it judges how they fit', () => {
    const error = refused(fileWith({ 'room.assistantXM': 0, minutes: 99 }));
    expect([error.kind, error.path, error.further]).toEqual(['wrongField', 'minutes', []]);
  });

  it('names the further problems after the first', () => {
    const error = refused(fileWith({ minutes: 99, 'cord.lengthM': 9, seed: 'x' }));
    expect([error.path, ...error.further.map((one) => one.path)]).toEqual(['seed', 'minutes', 'cord.lengthM']);
  });

  it('says one thing about one place', () => {
    const error = refused(fileWith({ id: 'X'.repeat(60) }));
    expect(error.further).toEqual([]);
  });
});

describe('A limit that a sentence names', () => {
  it.each([
    ['drape.left.lengthM', { 'drape.left.lengthM': 0.5 }],
    ['drape.right.lengthM', { 'drape.right.reach': 'inside', 'drape.right.lengthM': 1 }],
    ['cord.lengthM', { 'cord.lengthM': 1.2 }],
    ['tasks.coveredM', { station: 'sheath', 'tasks.coveredM': 1.9, items: [{ id: 'gel', kind: 'gelPacket', xM: -0.3 }, { id: 'a', kind: 'band', xM: -1.0 }, { id: 'b', kind: 'band', xM: -0.94 }] }],
    ['room.patient.openingM', { 'room.patient.openingM': 0.2, 'room.patient.siteXM': -0.14, 'room.patient.preparedBeyondM': 0, 'drape.left.gluedM': 0, 'drape.right.gluedM': 0 }],
  ] as const)('can be typed as it stands: %s', (path, changes) => {
    const limit = Number(/allowed is ([0-9.]+) at/.exec(refused(fileWith(changes)).message)![1]);
    const next = parseScenario(fileWith({ ...changes, [path]: limit }));
    expect(next.ok ? [] : [next.error, ...next.error.further].map((one) => one.path)).not.toContain(path);
  });
});
