import type { Scenario } from '../scenario/schema.ts';

/** Half width of the skin that counts as the puncture site itself, in metres. */
export const SITE_HALF_M = 0.03;

/** What the skin is at x, measured from the patient's middle. */
export function skinKind(scenario: Scenario, x: number): 'site' | 'preparedSkin' | 'patientSkin' {
  const { siteXM, openingM, preparedBeyondM } = scenario.room.patient;
  const d = Math.abs(x - siteXM);
  if (d <= SITE_HALF_M) return 'site';
  return d <= openingM / 2 + preparedBeyondM ? 'preparedSkin' : 'patientSkin';
}
