import type { Side } from '../base/side.ts';
import { coveredToM } from './layout.ts';
import { metresText, problem, roundedDown, valueText, type Problem } from './problem.ts';
import type { ItemKind, Scenario } from './schema.ts';

/** Least distance between the middles of two things that lie side by side, in metres. */
const APART_M = 0.05;
/** Least distance from the middle of a thing to the edge of the opening, in metres. */
const FROM_OPENING_M = 0.03;

/** Without these the tasks of the station cannot be done. */
const NEEDED: readonly ItemKind[] = ['gelPacket', 'syringe', 'needleSyringe'];

/** Names that other things in the room bear. */
const TAKEN: readonly string[] = ['probe', 'cord', 'drape', 'sheath', 'glove', 'gown', 'face', 'rail', 'pole', 'machine', 'bed', 'floor', 'kitTable', 'tableEdge', 'bin', 'patient', 'site', 'cover'];

/** The things on the field and on the kit table: their names, whether the tasks can be done with them, and where they lie. */
export function itemChecks(scenario: Scenario): readonly Problem[] {
  return [...nameChecks(scenario), ...neededChecks(scenario), ...placeChecks(scenario), ...apartChecks(scenario)];
}

const nameChecks = ({ items }: Scenario): readonly Problem[] =>
  items.flatMap(({ id }, k) => {
    const path = `items[${k}].id`;
    if (TAKEN.includes(id)) return [problem(path, valueText(id), 'a name that no other thing in the room has')];
    return items.findIndex((other) => other.id === id) < k ? [problem(path, `${valueText(id)} again`, 'each name once')] : [];
  });

const neededChecks = ({ items }: Scenario): readonly Problem[] =>
  NEEDED.filter((kind) => !items.some((item) => item.kind === kind)).map((kind) => problem('items', `a list without a ${kind}`, 'one of them at least, because a task needs it'));

interface Lying {
  readonly path: string;
  readonly x: number;
}

const lying = ({ items, probe }: Scenario): readonly Lying[] => [{ path: 'probe.xM', x: probe.xM }, ...items.map(({ xM }, k) => ({ path: `items[${k}].xM`, x: xM }))];

function placeChecks(scenario: Scenario): readonly Problem[] {
  const { kitTable, patient } = scenario.room;
  const margin = scenario.policy.marginM;
  const edge = (side: Side): number => roundedDown(coveredToM(scenario, side) - margin);
  const within = (x: number, low: number, high: number): boolean => x >= low - 1e-9 && x <= high + 1e-9;
  const opening = patient.openingM / 2 + FROM_OPENING_M;
  const table = [kitTable.xM - kitTable.widthM / 2 + margin, kitTable.xM + kitTable.widthM / 2 - margin] as const;
  const field = `the field, ${metresText(-edge('right'))} to ${metresText(patient.siteXM - opening)} or ${metresText(patient.siteXM + opening)} to ${metresText(edge('left'))}`;
  return lying(scenario).flatMap(({ path, x }) => {
    const onField = within(x, -edge('right'), edge('left')) && Math.abs(x - patient.siteXM) >= opening - 1e-9;
    if (onField || (path !== 'probe.xM' && within(x, ...table))) return [];
    const kit = path === 'probe.xM' ? '' : `, and the kit table, ${metresText(table[0])} to ${metresText(table[1])}`;
    return [problem(path, metresText(x), `${field}${kit}`)];
  });
}

const apartChecks = (scenario: Scenario): readonly Problem[] =>
  lying(scenario).flatMap(({ path, x }, k, all) => {
    const other = all.slice(0, k).find((one) => Math.abs(one.x - x) < APART_M - 1e-9);
    return other === undefined ? [] : [problem(path, metresText(x), `${metresText(APART_M)} or more from ${other.path}, which is ${metresText(other.x)}`)];
  });
