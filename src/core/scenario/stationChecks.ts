import { gownChecks } from './gownChecks.ts';
import { cordWayM } from './layout.ts';
import { atMost, problem, valueText, type Problem } from './problem.ts';
import type { Scenario, StationName } from './schema.ts';
import { hasGownTable, loadsSheath } from './station.ts';

/** Length of the sheath that goes over the probe itself, in metres. */
const OVER_PROBE_M = 0.13;
/** Cord that stays on the side of the machine, where no sheath comes, in metres. */
const AT_MACHINE_M = 0.3;
/** What sheath and cord must have beyond the length that is asked for, in metres: nobody draws a film to its very end. */
const TO_SPARE_M = 0.15;

/** Stations in the order of the procedure. */
const ORDER: readonly StationName[] = ['gown', 'sheath', 'field'];

/** Whether the stations of a run and what each of them needs of sheath and cord fit each other. */
export function stationChecks(scenario: Scenario): readonly Problem[] {
  const { station, followedBy } = scenario;
  const order = followedBy.flatMap((next, k) => {
    if (next === station) return [problem(`followedBy[${k}]`, valueText(next), 'another station than the one in which the run begins')];
    const before = k > 0 ? followedBy[k - 1]! : station;
    return ORDER.indexOf(next) > ORDER.indexOf(before) ? [] : [problem(`followedBy[${k}]`, valueText(next), `a station that comes after ${valueText(before)}`)];
  });
  return [...order, ...(loadsSheath(scenario) ? loadingChecks(scenario) : sheathedChecks(scenario)), ...(hasGownTable(scenario) ? gownChecks(scenario) : [])];
}

/** The probe is sheathed in the run. */
const loadingChecks = ({ sheath, cord, tasks, policy }: Scenario): readonly Problem[] => [
  ...atMost('tasks.coveredM', tasks.coveredM, Math.min(sheath.lengthM - OVER_PROBE_M, cord.lengthM - AT_MACHINE_M) - TO_SPARE_M, 'what sheath and cord allow with some to spare'),
  ...atMost('policy.sheathTailM', policy.sheathTailM, tasks.coveredM, 'the length of cord that must be covered'),
];

/** The probe lies sheathed on the field, its cord laid from there. */
const sheathedChecks = (scenario: Scenario): readonly Problem[] => {
  const { cord, probe, policy } = scenario;
  return [
    ...atMost('cord.slackM', cord.slackM, cord.lengthM - cordWayM(scenario, probe.xM), 'what is left of the cord between the probe and the outlet'),
    ...atMost('cord.coveredM', cord.coveredM, cord.lengthM, 'the length of the cord'),
    ...atMost('policy.sheathTailM', policy.sheathTailM, cord.coveredM, 'the covered part of the cord'),
  ];
};
