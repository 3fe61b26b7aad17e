import type { Scenario } from '../../scenario/schema.ts';
import { breaksArticle, drapeStandard, gownZones, prepLabel, sheathCatalogue, studyGuide, tiltStudies, type Mark, type Source } from './sources.ts';

/** A setting of a scenario in which local practice differs, with what is published about it. */
export interface PolicyRow {
  /** Place in the scenario file. */
  readonly path: string;
  readonly setting: string;
  readonly read: (scenario: Scenario) => number | string;
  readonly unit: 'm' | '°' | '';
  /** Values seen in print and in local policies, in words. */
  readonly published: string;
  /** Whether a value lies within what is published. */
  readonly within: (value: number | string) => boolean;
  readonly source: Source;
  readonly mark: Mark;
}

const between =
  (low: number, high: number) =>
  (value: number | string): boolean =>
    typeof value === 'number' && value >= low && value <= high;

const policy = <Key extends keyof Scenario['policy']>(key: Key): Pick<PolicyRow, 'path' | 'read'> => ({ path: `policy.${key}`, read: (scenario) => scenario.policy[key] });

/** Every setting that a scenario can differ in from published practice. */
export const POLICY_TABLE: readonly PolicyRow[] = [
  {
    ...policy('marginM'),
    setting: 'Margin of a sterile surface',
    unit: 'm',
    published: '2.5 cm (1 in); 5 cm in some places',
    within: between(0.025, 0.05),
    source: studyGuide,
    mark: 'looked-up',
  },
  {
    ...policy('sheathTailM'),
    setting: 'Last part of the sheath that does not count as sterile',
    unit: 'm',
    published: 'no published length; 0 to 30 cm by local habit',
    within: between(0, 0.3),
    source: 'common practice',
    mark: 'memory',
  },
  {
    ...policy('sleeveAboveElbowM'),
    setting: 'Sterile sleeve above the elbow',
    unit: 'm',
    published: 'to the elbow, or 5 cm (2 in) above it',
    within: between(0, 0.05),
    source: gownZones,
    mark: 'looked-up',
  },
  {
    ...policy('lowerLimit'),
    setting: 'What hands must stay above',
    unit: '',
    published: 'the field, or the waist; the higher of both is the careful reading',
    within: (value) => value === 'field' || value === 'waist',
    source: studyGuide,
    mark: 'looked-up',
  },
  {
    ...policy('reachOver'),
    setting: 'Reaching over the field with something unsterile',
    unit: '',
    published: 'always a break, or only when something was touched or shed',
    within: (value) => value === 'always' || value === 'touchOnly',
    source: breaksArticle,
    mark: 'derived',
  },
  {
    ...policy('driftTowardSiteM'),
    setting: 'Movement of the drape toward the site that counts',
    unit: 'm',
    published: 'no published length: a laid drape is not moved; more than 1 cm is beyond what one could fail to mean',
    within: between(0, 0.01),
    source: drapeStandard,
    mark: 'derived',
  },
  {
    ...policy('remedySeconds'),
    setting: 'Factor on the time of every remedy',
    unit: '',
    published: 'no published times; at 1 they are common practice, but preparing again stays shorter than labels ask (30 s of strokes and 3 min of drying)',
    within: between(1, 2),
    source: prepLabel,
    mark: 'derived',
  },
  {
    path: 'cord.coveredM',
    read: ({ cord }) => cord.coveredM,
    setting: 'Length of cord in the sheath',
    unit: 'm',
    published: '30 to 244 cm on the market; kits for this procedure mostly 91 to 150 cm (memory)',
    within: between(0.3, 2.44),
    source: sheathCatalogue,
    mark: 'looked-up',
  },
  {
    path: 'room.assistantXM',
    read: ({ room }) => Math.abs(room.assistantXM) - room.rails.xM - room.rails.thicknessM / 2,
    setting: 'Distance of the assistant from the field',
    unit: 'm',
    published: '30 cm (12 in) or more; 45 cm, or merely no touch, in some places',
    within: (value) => Number(value) >= 0.3,
    source: studyGuide,
    mark: 'looked-up',
  },
  {
    path: 'room.bed.headDownDeg',
    read: ({ room }) => room.bed.headDownDeg,
    setting: 'Head-down tilt',
    unit: '°',
    published: '0 to 15 degrees in use; beyond 10 the vein grows no more',
    within: between(0, 15),
    source: tiltStudies,
    mark: 'derived',
  },
];
