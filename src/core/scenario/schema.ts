import { z } from 'zod';
import { gownSchema, STATURES } from './gownSchema.ts';
import { rubricSchema, SKILLS } from './rubric.ts';

/**
 * Shape of a scenario file, in SI units (names end in their unit). The room is seen from the foot of the bed: x to the right of
 * the screen with 0 at the patient's midline, y up from the floor. "left" and "right" are the operator's and the patient's own,
 * so the right side has negative x. Every part has defaults (sources: the facts table in scenarios/README.md).
 */
const metres = (low: number, high: number, value: number) => z.number().min(low).max(high).default(value);

const rail = z.strictObject({
  up: z.boolean().default(true).describe('a lowered rail is out of the way'),
  topAboveMattressM: metres(0.1, 0.6, 0.3),
});

const drapeSide = z.strictObject({
  reach: z.enum(['over', 'inside']).default('over').describe('over: hangs over the rail; inside: ends on the bed, the rail stays bare'),
  lengthM: metres(0.3, 1.6, 1.15).describe('from the edge of the opening outwards, measured along the sheet'),
  gluedM: metres(0, 0.15, 0.04).describe('width of the adhesive strip beside the opening'),
  peelNPerM: metres(0, 500, 60).describe('peel force per metre of edge at 90 degrees'),
});

const item = z.strictObject({
  id: z.string().regex(/^[a-z][a-zA-Z0-9]*$/).max(24),
  kind: z.enum(['gelPacket', 'syringe', 'needleSyringe', 'gauze', 'band', 'gelBottle']),
  xM: z.number().min(-1.6).max(1.6).describe('where it lies, on the field or the kit table; a gel bottle, which is not sterile, stands on the machine'),
  rubbish: z.boolean().default(false).describe('must be in the bin at the end'),
  spare: z.boolean().default(false).describe('still in its packet with the assistant, who drops it on to the kit table at xM when asked to open a packet'),
});

const cue = z.strictObject({
  atS: z.number().min(0).max(3600),
  kind: z.enum(['patientTurns', 'cough', 'cordPulled', 'itch']),
  amount: z.number().min(0).max(2).default(1).describe('1 is the usual size: turn 3 cm, cough 12 mm, pull 12 cm'),
  lookAlike: z.boolean().default(false).describe('looks alarming and breaks nothing by itself: a trial of noticing'),
});

const answer = z.enum(['yes', 'no', 'unknown']);

/** What was done before the run begins; by default what a perfect operator would have left. */
const before = z.strictObject({
  handHygiene: answer.default('yes'),
  antiseptics: z.array(z.enum(['chlorhexidine', 'povidoneIodine', 'alcohol', 'other'])).max(4).default(['chlorhexidine']),
  dry: answer.default('yes').describe('the prepared skin was dry'),
  cap: answer.default('yes'),
  mask: answer.default('yes'),
  gown: answer.default('yes'),
  gloves: answer.default('yes'),
  drapeWholeBody: answer.default('yes').describe('a large sterile drape over the whole body of the patient'),
  ageDays: z.int().min(0).max(45000).default(20000),
  contraindication: answer.default('no').describe('a documented contraindication to chlorhexidine'),
  emergency: z.boolean().default(false),
});

export const scenarioSchema = z.strictObject({
  format: z.literal('sterile-field-scenario'),
  version: z.literal(1),
  id: z.string().regex(/^[a-z][a-z0-9-]*$/).max(40),
  title: z.string().min(3).max(60),
  summary: z.string().min(3).max(300),
  seed: z.int().min(0).max(4294967295),
  station: z.enum(['gown', 'sheath', 'field']).describe('where the run begins'),
  followedBy: z.array(z.enum(['sheath', 'field'])).max(2).default([]).describe('stations that come after it in the same run'),
  minutes: z.number().min(1).max(15).default(6).describe('time foreseen; the run goes on when it is over'),
  room: z
    .strictObject({
      bed: z
        .strictObject({
          mattressTopM: metres(0.6, 1.2, 0.95),
          mattressWidthM: metres(0.7, 1.1, 0.9),
          mattressThicknessM: metres(0.08, 0.2, 0.14),
          headDownDeg: z.number().min(0).max(30).default(0),
          adjustable: z.boolean().default(false),
        })
        .prefault({}),
      rails: z
        .strictObject({
          xM: metres(0.4, 0.65, 0.49),
          thicknessM: metres(0.015, 0.06, 0.03),
          left: rail.prefault({}),
          right: rail.prefault({}),
        })
        .prefault({}),
      pole: z.strictObject({ xM: z.number().min(-1.6).max(1.6).default(0.65), topM: metres(1.2, 2.3, 2.05), radiusM: metres(0.008, 0.03, 0.0125) }).prefault({}),
      patient: z
        .strictObject({
          widthM: metres(0.25, 0.6, 0.42),
          heightM: metres(0.08, 0.25, 0.15),
          siteXM: z.number().min(-0.15).max(0.15).default(-0.05),
          openingM: metres(0.05, 0.2, 0.1).describe('width of the opening in the drape, centred on the site'),
          preparedBeyondM: metres(0, 0.2, 0.06).describe('how far prepared skin goes on under the drape, each side of the opening'),
        })
        .prefault({}),
      machine: z.strictObject({ xM: z.number().min(-1.8).max(1.8).default(1.15), outletXM: z.number().min(-1.6).max(1.6).default(1.0), outletYM: metres(0.5, 1.4, 0.9) }).prefault({}),
      kitTable: z.strictObject({ xM: z.number().min(-1.8).max(1.8).default(-0.98), topM: metres(0.7, 1.2, 0.95), widthM: metres(0.3, 0.9, 0.52) }).prefault({}),
      bin: z.strictObject({ xM: z.number().min(-1.9).max(1.9).default(-1.5), rimM: metres(0.3, 0.9, 0.62), widthM: metres(0.2, 0.6, 0.34) }).prefault({}),
      assistantXM: z.number().min(-2).max(2).default(1.65),
    })
    .prefault({}),
  operator: z
    .strictObject({
      stature: z.enum(STATURES).default('given').describe('given: the lengths below; else a person of the table of statures, whose lengths replace them'),
      shoulderM: metres(1.2, 1.6, 1.42),
      faceM: metres(1.4, 1.85, 1.64),
      waistM: metres(0.85, 1.25, 1.05),
      shoulderHalfWidthM: metres(0.15, 0.25, 0.19),
      upperArmM: metres(0.25, 0.42, 0.33),
      forearmM: metres(0.2, 0.34, 0.27),
      handM: metres(0.15, 0.23, 0.19),
      chestDepthM: metres(0.18, 0.35, 0.25).describe('how deep the body is, in front of which an open gown is held'),
      foreshortening: metres(0.5, 1, 0.75),
      handSpeedMps: metres(0.3, 2, 1),
      handForceN: metres(5, 40, 20),
      gripForceN: metres(2, 40, 10),
      gripReachM: metres(0.01, 0.06, 0.03),
    })
    .prefault({}),
  drape: z
    .strictObject({
      left: drapeSide.prefault({}),
      right: drapeSide.prefault({}),
      areaMassKgPerM2: metres(0.03, 0.12, 0.05),
      linkM: metres(0.01, 0.03, 0.018),
      frictionOnSkin: metres(0.05, 1.5, 0.4),
      frictionOnBed: metres(0.05, 1, 0.25),
      frictionOnItself: metres(0.05, 1, 0.35),
    })
    .prefault({}),
  cord: z
    .strictObject({
      lengthM: metres(1, 2.6, 1.9).describe('from the probe to the outlet; the rest hangs on the machine'),
      coveredM: metres(0.2, 2.5, 1.2).describe('length of cord inside the sheath, from the probe'),
      slackM: metres(0, 0.8, 0.45).describe('cord laid in turns on the field, beyond the straight way from the probe over the edge'),
      clipN: metres(0, 20, 6).describe('pull at which the clip that ties the cord to the drape inside the edge lets go; 0 is no clip'),
      massKgPerM: metres(0.04, 0.12, 0.077),
      radiusM: metres(0.0025, 0.005, 0.0035),
      linkM: metres(0.01, 0.04, 0.02),
      friction: metres(0.05, 1, 0.3),
    })
    .prefault({}),
  sheath: z
    .strictObject({
      form: z.enum(['telescoped', 'loose']).default('telescoped').describe('telescoped: folded together so that it pays out; loose: must be gathered before it is opened'),
      lengthM: metres(0.91, 2.44, 1.22),
      widthM: metres(0.1, 0.18, 0.14).describe('lay-flat width'),
      xM: z.number().min(-1.6).max(1.6).default(-0.8).describe('where it lies on the kit table'),
      drawN: metres(0.05, 5, 0.4).describe('pull that draws it off its folds on a straight cord'),
      friction: metres(0.05, 1, 0.25).describe('of the film on the cord'),
      tearN: metres(2, 60, 25).describe('push of the probe at which the closed end tears'),
    })
    .prefault({})
    .describe('read where a run begins with sheathing the probe'),
  gown: gownSchema,
  probe: z.strictObject({ xM: z.number().min(-0.5).max(0.5).default(0.29), massKg: metres(0.05, 0.3, 0.15) }).prefault({}),
  assistant: z
    .strictObject({
      skill: z.number().min(0).max(1).default(0.9).describe('0 comes too close and drops the cord, 1 keeps well clear and lets it down'),
      attentive: z.number().min(0).max(1).default(0.8).describe('how likely it is that a break which could be seen is seen and said, where coaching is spoken'),
      letsGoAfterS: z.number().min(0).max(60).default(0).describe('hurried: lets go of the probe so long after it was lowered, without being told; 0 waits for the word'),
    })
    .prefault({}),
  items: z.array(item).max(12).prefault([
    { id: 'gel', kind: 'gelPacket', xM: -0.31, rubbish: true },
    { id: 'anaesthetic', kind: 'syringe', xM: -1.02 },
    { id: 'needle', kind: 'needleSyringe', xM: -0.86 },
    { id: 'gauze', kind: 'gauze', xM: -1.15, rubbish: true },
  ]),
  cues: z.array(cue).max(30).default([]),
  noticing: z.strictObject({ windowS: z.number().min(2).max(60).default(10).describe('how long after a look-alike a report counts as caused by it') }).prefault({}),
  before: before.prefault({}),
  tasks: z
    .strictObject({
      steadyViewS: metres(1, 20, 3).describe('how long the probe must be held still at the site'),
      steadySpeedMps: metres(0.002, 0.1, 0.015),
      parkedS: metres(1, 20, 4).describe('how long the probe must lie where it was parked'),
      readyS: metres(0.5, 10, 2).describe('how long probe and needle must be held at the site together'),
      gelInsideMl: metres(1, 20, 5).describe('sterile gel that must lie in the closed end of the sheath'),
      coveredM: metres(0.2, 2, 0.8).describe('length of cord that must be covered before the probe is laid down'),
      waitS: metres(3, 60, 10).describe('how long gowned and gloved hands must wait together above the waist'),
    })
    .prefault({}),
  policy: z
    .strictObject({
      marginM: metres(0, 0.06, 0.025),
      sheathTailM: metres(0, 0.35, 0.15).describe('last part of the sheath at its open end that does not count as sterile'),
      sleeveAboveElbowM: metres(0, 0.1, 0.05),
      reachOver: z.enum(['always', 'touchOnly']).default('always'),
      lowerLimit: z.enum(['field', 'waist']).default('field').describe('what hands must stay above: over the field the drape under the hand and beside it the waist, or the waist everywhere'),
      driftTowardSiteM: metres(0.002, 0.05, 0.01).describe('how far the edge of the drape may move toward the site before it counts as slid'),
      remedySeconds: metres(0.1, 2, 1).describe('factor on the time that each remedy takes'),
    })
    .prefault({}),
  rulesOff: z.array(z.string()).default([]).describe('ids of rules of the rule book that this scenario does not judge'),
  coaching: z.enum(['shown', 'spoken', 'silent']).default('silent'),
  rubric: rubricSchema.prefault({}),
  trains: z.array(z.enum(SKILLS)).max(SKILLS.length).default([]).describe('what it gives practice in'),
});

/** A scenario after reading: every default filled in. Lengths in metres, times in seconds, forces in newtons. */
export type Scenario = z.output<typeof scenarioSchema>;
/** A scenario as an author writes it. */
export type ScenarioSource = z.input<typeof scenarioSchema>;
export type StationName = Scenario['station'];
export type ItemKind = Scenario['items'][number]['kind'];
export type CueKind = Scenario['cues'][number]['kind'];
export type Rubric = Scenario['rubric'];
/** What was done before the run begins, for the insertion bundle. */
export type Before = Scenario['before'];
export type Answer = z.output<typeof answer>;
