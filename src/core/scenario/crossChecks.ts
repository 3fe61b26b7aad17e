import { SIDES } from '../base/side.ts';
import { itemChecks } from './itemChecks.ts';
import { cordWayM, railOuterM, skinWayM, standing, wayOverM, wayToBedsideM } from './layout.ts';
import { nearest } from './nearest.ts';
import { ADVICE, atLeast, atMost, metresText, problem, valueText, type Problem } from './problem.ts';
import { rubricChecks } from './rubricChecks.ts';
import type { Scenario } from './schema.ts';
import { stationChecks } from './stationChecks.ts';

type Check = (scenario: Scenario) => readonly Problem[];

/** Cord left over when the probe is at the site, so that a hand can move it; in metres. */
const CORD_SLACK_M = 0.15;
/** Least length of drape that hangs down beyond the rail, so that it does not come back over it at the first tug; in metres. */
const HANG_M = 0.05;
/** Bare bed between the rail and a drape that ends inside it, so that the sheet does not stand up against the rail; in metres. */
const CLEAR_M = 0.06;

/** What no single field can say: whether the parts fit each other. Empty when they do. `ruleIds` null leaves `rulesOff` unjudged. */
export function crossChecks(scenario: Scenario, ruleIds: readonly string[] | null): readonly Problem[] {
  const checks: readonly Check[] = [bedChecks, siteChecks, standingChecks, operatorChecks, drapeChecks, cordChecks, stationChecks, itemChecks, cueChecks, lookAlikeChecks, rubricChecks];
  return [...checks.flatMap((check) => check(scenario)), ...ruleChecks(scenario, ruleIds)];
}

const bedChecks: Check = (scenario) =>
  atLeast('room.rails.xM', scenario.room.rails.xM, scenario.room.bed.mattressWidthM / 2 + scenario.room.rails.thicknessM / 2, 'so that the rails stand outside the mattress');

const siteChecks: Check = (scenario) => {
  const { siteXM, openingM, preparedBeyondM, widthM } = scenario.room.patient;
  const room = widthM / 2 - Math.abs(siteXM);
  const opening = atMost('room.patient.openingM', openingM, 2 * room, 'so that the opening lies on the patient');
  if (opening.length > 0) return opening;
  const beside = room - openingM / 2;
  return [
    ...atMost('room.patient.preparedBeyondM', preparedBeyondM, beside, 'so that the prepared skin lies on the patient'),
    ...SIDES.flatMap((side) => atMost(`drape.${side}.gluedM`, scenario.drape[side].gluedM, beside, 'so that the adhesive lies on the patient')),
  ];
};

const standingChecks: Check = (scenario) => {
  const { machine, assistantXM } = scenario.room;
  const spans = standing(scenario);
  const where = (k: number): string => `stands from ${metresText(spans[k]!.low)} to ${metresText(spans[k]!.high)}`;
  const overlaps = spans.flatMap((a, i) =>
    spans.slice(0, i).flatMap((b, k) =>
      a.low < b.high && b.low < a.high ? [{ path: `${a.path}.xM`, message: `${a.path} ${where(i)} and ${b.path} ${where(k)}; allowed is one beside the other. ${ADVICE}` }] : [],
    ),
  );
  const outletM = Math.abs(machine.outletXM);
  const away = outletM < railOuterM(scenario) || outletM > Math.abs(machine.xM) || machine.outletXM * machine.xM < 0;
  const outlet = away ? [problem('room.machine.outletXM', metresText(machine.outletXM), `between the bed and room.machine.xM, which is ${metresText(machine.xM)}`)] : [];
  const inBed = Math.abs(assistantXM) < railOuterM(scenario);
  const assistant = inBed ? [problem('room.assistantXM', metresText(assistantXM), `${metresText(railOuterM(scenario))} or more to either side, beside the bed`)] : [];
  return [...outlet, ...overlaps, ...assistant];
};

const operatorChecks: Check = ({ operator }) => [
  ...atLeast('operator.faceM', operator.faceM, operator.shoulderM + 0.1, 'above the shoulders'),
  ...atMost('operator.waistM', operator.waistM, operator.shoulderM - 0.2, 'below the shoulders'),
];

const drapeChecks: Check = (scenario) =>
  SIDES.flatMap((side) => {
    const { reach, lengthM } = scenario.drape[side];
    const path = `drape.${side}.lengthM`;
    if (reach === 'over') return atLeast(path, lengthM, wayOverM(scenario, side) + HANG_M, `so that it hangs over the ${scenario.room.rails[side].up ? 'rail' : 'side of the bed'}`);
    return [
      ...atLeast(path, lengthM, skinWayM(scenario, side), 'so that it covers the patient'),
      ...atMost(path, lengthM, wayToBedsideM(scenario, side) - CLEAR_M, 'so that it ends on the bed'),
    ];
  });

const cordChecks: Check = (scenario) => [
  ...atLeast('cord.lengthM', scenario.cord.lengthM, cordWayM(scenario, scenario.room.patient.siteXM) + CORD_SLACK_M, 'so that it reaches the site over the rail with some slack'),
];

const cueChecks: Check = (scenario) =>
  scenario.cues.flatMap((cue, k) => (cue.atS > scenario.minutes * 60 ? [problem(`cues[${k}].atS`, String(cue.atS), `0 to ${scenario.minutes * 60}, within the minutes foreseen`)] : []));

/** A report must be caused by one look-alike only, and an itch looks like nothing. */
const lookAlikeChecks: Check = ({ cues, noticing }) => {
  const planted = cues.map((cue, k) => ({ ...cue, k })).filter(({ lookAlike }) => lookAlike);
  const feints = planted.filter(({ kind }) => kind === 'itch').map(({ k }) => problem(`cues[${k}].lookAlike`, 'true', 'false for an itch, which nobody can take for a break'));
  const inOrder = [...planted].sort((a, b) => a.atS - b.atS || a.k - b.k);
  const crowded = inOrder.flatMap(({ atS, k }, n) => {
    const free = n === 0 ? 0 : inOrder[n - 1]!.atS + noticing.windowS;
    return n > 0 && atS <= free ? [problem(`cues[${k}].atS`, String(atS), `later than ${free}, when the window of the look-alike before it is over`)] : [];
  });
  return [...feints, ...crowded];
};

function ruleChecks({ rulesOff }: Scenario, ruleIds: readonly string[] | null): readonly Problem[] {
  return rulesOff.flatMap((id, k) => {
    const path = `rulesOff[${k}]`;
    if (rulesOff.indexOf(id) < k) return [problem(path, `${valueText(id)} again`, 'each rule once')];
    if (ruleIds === null || ruleIds.includes(id)) return [];
    const meant = nearest(id, ruleIds);
    return [problem(path, valueText(id), `a rule of the rule book${meant === null ? '' : `; the nearest is ${meant}`}`)];
  });
}
