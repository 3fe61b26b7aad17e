import { describe, expect, it } from 'vitest';
import { STEPS_PER_SECOND } from '../../../src/core/base/time.ts';
import { Room } from '../../../src/core/room/room.ts';
import { parseScenario } from '../../../src/core/scenario/parseScenario.ts';
import { loadsSheath } from '../../../src/core/scenario/station.ts';
import { shippedScenarios } from './shipped.ts';

const QUIET_S = 10;

/** The room of a shipped scenario, left alone for a while; what was seen of it in the last second. */
function leftAlone(text: string) {
  const result = parseScenario(text);
  if (!result.ok) throw new Error(result.error.message);
  const scenario = { ...result.value, cues: [] };
  const room = new Room(scenario, scenario.seed);
  const steps = QUIET_S * STEPS_PER_SECOND;
  const all = Array.from({ length: steps }, (_, step) => room.step(step, []));
  const { world, drapes } = room.scene;
  const edges = (['left', 'right'] as const).map((side) => world.x[world.strandStart(drapes[side])]!);
  return { scenario, facts: all.flatMap((one) => one.facts), lastSecond: all.slice(-STEPS_PER_SECOND).map((one) => one.observation), edges };
}

describe.each(Object.entries(shippedScenarios()))('With hands off, in %s', (_, text) => {
  const { scenario, facts, lastSecond, edges } = leftAlone(text);

  it('the probe lies still on the field, ready to be taken, or hangs bare at its machine', () => {
    const atMachine = loadsSheath(scenario);
    expect(lastSecond.filter(({ field }) => field.probe.lyingOnField === atMachine || field.probe.heldBy !== null).map(({ field }) => field.probe.speed)).toEqual([]);
    expect(lastSecond.filter(({ sheath }) => (sheath?.sheath ?? null) !== (atMachine ? 'lying' : null))).toEqual([]);
  });

  it('nothing falls, nothing is in the bin, and all of the rubbish is still there', () => {
    const { dropped, binned, rubbishLeft } = lastSecond.at(-1)!.field;
    expect([dropped, binned]).toEqual([[], []]);
    expect([...rubbishLeft].sort()).toEqual(scenario.items.filter((item) => item.rubbish).map((item) => item.id).sort());
  });

  it('the drape stays where it was laid', () => {
    const { siteXM, openingM } = scenario.room.patient;
    expect(facts.filter((fact) => fact.kind === 'drape.drifted')).toEqual([]);
    expect(edges[0]).toBeCloseTo(siteXM + openingM / 2, 2);
    expect(edges[1]).toBeCloseTo(siteXM - openingM / 2, 2);
  });
});
