import type { Side } from '../base/side.ts';
import { coveredToM, MACHINE_HALF_M } from './layout.ts';
import { metresText, problem, roundedDown, valueText, type Problem } from './problem.ts';
import type { ItemKind, Scenario, StationName } from './schema.ts';
import { loadsSheath, stationsOf } from './station.ts';

/** Least distance between the middles of two things that lie side by side, in metres. */
const APART_M = 0.05;
/** Least distance from the middle of a thing to the edge of the opening, in metres. */
const FROM_OPENING_M = 0.03;

/** Least distance from the middle of a bottle to the side of the machine on which it stands, in metres. */
const FROM_SIDE_M = 0.03;

/** So many of each are used up or worn by the tasks of a station. A packet from which gel was squeezed into the sheath is empty. */
const NEEDED: Readonly<Record<StationName, Readonly<Partial<Record<ItemKind, number>>>>> = {
  gown: {},
  sheath: { gelPacket: 1, band: 2 },
  field: { gelPacket: 1, syringe: 1, needleSyringe: 1 },
};
const IN_WORDS: readonly string[] = ['none', 'one', 'two'];

/** Names that other things in the room bear. */
const TAKEN: readonly string[] = ['probe', 'bareProbe', 'cord', 'drape', 'sheath', 'sheathRoll', 'pocket', 'film', 'glove', 'gloveLeft', 'gloveRight', 'gown', 'gownPacket', 'gownTable', 'tieCard', 'person', 'skin', 'face', 'rail', 'pole', 'machine', 'bed', 'floor', 'kitTable', 'tableEdge', 'bin', 'patient', 'site', 'cover'];

/** The things on the field and on the kit table: their names, whether the tasks can be done with them, and where they lie. */
export function itemChecks(scenario: Scenario): readonly Problem[] {
  return [...nameChecks(scenario), ...neededChecks(scenario), ...spareChecks(scenario), ...placeChecks(scenario), ...apartChecks(scenario)];
}

const nameChecks = ({ items }: Scenario): readonly Problem[] =>
  items.flatMap(({ id }, k) => {
    const path = `items[${k}].id`;
    if (TAKEN.includes(id)) return [problem(path, valueText(id), 'a name that no other thing in the room has')];
    return items.findIndex((other) => other.id === id) < k ? [problem(path, `${valueText(id)} again`, 'each name once')] : [];
  });

function neededChecks(scenario: Scenario): readonly Problem[] {
  const stations = stationsOf(scenario);
  const kinds = [...new Set(stations.flatMap((station) => Object.keys(NEEDED[station]) as ItemKind[]))];
  return kinds.flatMap((kind) => {
    const needed = stations.reduce((sum, station) => sum + (NEEDED[station][kind] ?? 0), 0);
    const there = scenario.items.filter((item) => item.kind === kind).length;
    if (there >= needed) return [];
    const found = there === 0 ? `a list without a ${kind}` : `a list with ${IN_WORDS[there]!} ${kind}`;
    return [problem('items', found, `${IN_WORDS[needed]!} of them at least, because ${needed === 1 ? 'a task needs it' : 'the tasks need them'}`)];
  });
}

/** What lies in the room at the start or is dropped there. */
interface Lying {
  readonly path: string;
  readonly x: number;
  readonly on: 'field' | 'fieldOrTable' | 'table' | 'machine';
}

const lying = (scenario: Scenario): readonly Lying[] => {
  const { items, probe, sheath } = scenario;
  const first: Lying = loadsSheath(scenario) ? { path: 'sheath.xM', x: sheath.xM, on: 'table' } : { path: 'probe.xM', x: probe.xM, on: 'field' };
  return [first, ...items.map(({ xM, kind, spare }, k): Lying => ({ path: `items[${k}].xM`, x: xM, on: kind === 'gelBottle' ? 'machine' : spare ? 'table' : 'fieldOrTable' }))];
};

/** What comes in a packet is sterile. */
const spareChecks = ({ items }: Scenario): readonly Problem[] =>
  items.flatMap(({ kind, spare }, k) => (spare && kind === 'gelBottle' ? [problem(`items[${k}].spare`, 'true', 'false for a gelBottle, which comes in no packet')] : []));

function placeChecks(scenario: Scenario): readonly Problem[] {
  const { kitTable, patient, machine } = scenario.room;
  const margin = scenario.policy.marginM;
  const edge = (side: Side): number => roundedDown(coveredToM(scenario, side) - margin);
  const within = (x: number, low: number, high: number): boolean => x >= low - 1e-9 && x <= high + 1e-9;
  const spanText = (low: number, high: number): string => `${metresText(low)} to ${metresText(high)}`;
  const opening = patient.openingM / 2 + FROM_OPENING_M;
  const onField = (x: number): boolean => within(x, -edge('right'), edge('left')) && Math.abs(x - patient.siteXM) >= opening - 1e-9;
  const table = [kitTable.xM - kitTable.widthM / 2 + margin, kitTable.xM + kitTable.widthM / 2 - margin] as const;
  const top = [machine.xM - MACHINE_HALF_M + FROM_SIDE_M, machine.xM + MACHINE_HALF_M - FROM_SIDE_M] as const;
  const field = `the field, ${spanText(-edge('right'), patient.siteXM - opening)} or ${spanText(patient.siteXM + opening, edge('left'))}`;
  const places: Readonly<Record<Lying['on'], readonly [allowed: (x: number) => boolean, words: string]>> = {
    field: [onField, field],
    fieldOrTable: [(x) => onField(x) || within(x, ...table), `${field}, and the kit table, ${spanText(...table)}`],
    table: [(x) => within(x, ...table), `the kit table, ${spanText(...table)}`],
    machine: [(x) => within(x, ...top), `the top of the machine, ${spanText(...top)}`],
  };
  return lying(scenario).flatMap(({ path, x, on }) => (places[on][0](x) ? [] : [problem(path, metresText(x), places[on][1])]));
}

const apartChecks = (scenario: Scenario): readonly Problem[] =>
  lying(scenario).flatMap(({ path, x }, k, all) => {
    const other = all.slice(0, k).find((one) => Math.abs(one.x - x) < APART_M - 1e-9);
    return other === undefined ? [] : [problem(path, metresText(x), `${metresText(APART_M)} or more from ${other.path}, which is ${metresText(other.x)}`)];
  });
