import { describe, expect, it, vi } from 'vitest';
import { keyMeaning, REQUEST_KEYS } from '../../../src/app/input/keyMap.ts';
import { assistantInWords } from '../../../src/app/run/assistantInWords.ts';
import type { LiveRun } from '../../../src/app/run/LiveRun.ts';
import { obey } from '../../../src/app/run/pageOrders.ts';
import { canBeAsked, requestsIn } from '../../../src/app/run/requestsIn.ts';
import { REQUEST_WORDS } from '../../../src/app/run/words.ts';
import { commandSchema } from '../../../src/core/commands/command.ts';
import { LOADING, scenarioWith } from '../support/scenario.ts';

const ALWAYS = ['takeCord', 'giveSlack', 'letGo', 'stop', 'wipeFace', 'takeAway'];
const ADJUSTABLE = scenarioWith({ room: { bed: { adjustable: true } } });
const names = (scenario: Parameters<typeof requestsIn>[0]): string[] => requestsIn(scenario).map(({ request }) => request);

describe('Requests on offer', () => {
  it('on the field are the usual ones', () => {
    expect(names(scenarioWith())).toEqual(ALWAYS);
  });

  it('while a probe is sheathed are those for probe and sheath first, in a run through both stations too', () => {
    const { items } = LOADING;
    const closed = { ...LOADING, items: items.filter(({ spare }) => !spare) };
    expect(names(closed)).toEqual(['bringProbe', 'lower', 'pullTail', ...ALWAYS]);
    expect(names({ ...closed, followedBy: ['field'] })).toEqual(['bringProbe', 'lower', 'pullTail', ...ALWAYS]);
  });

  it('while a gown is put on are those for gown and card before all others', () => {
    expect(names({ ...LOADING, station: 'gown', followedBy: ['sheath'] }).slice(0, 3)).toEqual(['tieBack', 'takeCard', 'bringProbe']);
  });

  it('are a packet more where some are still closed', () => {
    expect(names(LOADING)).toEqual(['bringProbe', 'lower', 'pullTail', 'openPacket', 'offerPacket', ...ALWAYS]);
    const spare = scenarioWith({ items: [{ id: 'spareGel', kind: 'gelPacket', xM: -1, spare: true }] });
    expect(names(spare)).toEqual(['openPacket', 'offerPacket', ...ALWAYS]);
  });

  it('are for the bed last, where it goes up and down', () => {
    expect(names(ADJUSTABLE)).toEqual([...ALWAYS, 'bedUp', 'bedDown']);
    expect(names({ ...LOADING, room: ADJUSTABLE.room })).toEqual(['bringProbe', 'lower', 'pullTail', 'openPacket', 'offerPacket', ...ALWAYS, 'bedUp', 'bedDown']);
    expect(canBeAsked('bedUp', scenarioWith())).toBe(false);
  });

  it('have a key each that nothing else has, words, and a command', () => {
    expect(new Set(REQUEST_KEYS.map(({ code }) => code)).size).toBe(REQUEST_KEYS.length);
    expect(new Set(REQUEST_KEYS.map(({ cap }) => cap)).size).toBe(REQUEST_KEYS.length);
    for (const { request, code } of REQUEST_KEYS) {
      expect(keyMeaning(code, '')).toEqual({ kind: 'ask', request });
      expect(REQUEST_WORDS[request]).not.toBe('');
      expect(commandSchema.safeParse({ type: 'ask', request }).success).toBe(true);
    }
  });

  it.each([['KeyC', 'bringProbe'], ['KeyZ', 'lower'], ['Comma', 'pullTail'], ['Period', 'openPacket'], ['Semicolon', 'offerPacket'], ['PageUp', 'bedUp'], ['PageDown', 'bedDown']])('lie on %s: %s', (code, request) => {
    expect(keyMeaning(code, '')).toEqual({ kind: 'ask', request });
  });

  it('are passed on by key only where they are on offer, without naming a thing', () => {
    const asked = (scenario: LiveRun['run']['scenario']): unknown[] => {
      const order = vi.fn();
      const live = { run: { scenario }, hands: { order } } as unknown as LiveRun;
      for (const { request } of REQUEST_KEYS) obey({ kind: 'ask', request }, live, {} as never, {} as never, {} as never);
      return order.mock.calls.map(([command]) => command as unknown);
    };
    expect(asked(scenarioWith())).toEqual(ALWAYS.map((request) => ({ type: 'ask', request })));
    expect(asked(LOADING)).toContainEqual({ type: 'ask', request: 'openPacket' });
    expect(canBeAsked('openPacket', scenarioWith())).toBe(false);
  });
});

describe('What the assistant is at', () => {
  it.each(['bringingProbe', 'overMouth', 'lowering', 'supportingCord', 'pullingTail', 'openingPacket', 'offeringItem', 'movingBed'] as const)('%s is one sentence', (doing) => {
    expect(assistantInWords({ doing })).toMatch(/^The assistant [a-z ]+\.$/);
  });
});
