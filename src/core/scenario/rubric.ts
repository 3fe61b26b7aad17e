import { z } from 'zod';

const points = (value: number) => z.number().min(0).max(100).default(value);
const share = (value: number) => z.number().min(0).max(1).default(value);

const cost = (left: number, putRight: number) => z.strictObject({ left: points(left), putRight: points(putRight) }).prefault({});

/**
 * How a run of the scenario is scored. The verdict has conditions that nothing makes up for (breaks left open, critical tasks); the
 * points beside them are for learning. Sources of the defaults: scenarios/README.md.
 */
export const rubricSchema = z.strictObject({
  standard: points(90).describe('least total for met'),
  points: z.strictObject({ asepsis: points(55), procedure: points(30), handling: points(10), time: points(5) }).prefault({}),
  breaks: z
    .strictObject({
      critical: cost(55, 6),
      major: cost(20, 5),
      minor: cost(3, 1),
      unsaid: points(2).describe('more for each break that the operator never said'),
      minorAtMost: points(5).describe('all minor breaks together cost no more'),
    })
    .prefault({}),
  fails: z
    .strictObject({
      usedUnsterile: z.boolean().default(true).describe('something spoiled was used at the site, whatever was put right later'),
      majorLeft: z.boolean().default(true),
      majorsPutRight: z.int().min(0).max(20).default(1).describe('so many major breaks that were put right are still met'),
      ignoredRaised: z.boolean().default(true).describe('a break that was said and then left while the work went on counts one grade higher'),
      overTime: z.boolean().default(false),
    })
    .prefault({}),
  alsoCritical: z.array(z.enum(['probeTaken', 'airOut', 'banded', 'laidDown', 'view', 'park', 'anaesthetic', 'rubbish'])).max(8).default([]).describe('tasks without which a run is not met, besides those that are critical anyway'),
  tasks: z
    .strictObject({
      critical: points(6),
      other: points(4),
      outOfOrder: share(0.5).describe('part that a task out of order still earns'),
      steadiness: points(2),
      steadyShare: z.number().min(0.05).max(1).default(0.5).describe('part of the time at the site with a steady probe that earns all of it'),
      sharps: points(2),
    })
    .prefault({}),
  handling: z
    .strictObject({
      clearance: points(3),
      clearM: z.number().min(0.002).max(0.2).default(0.015).describe('gap to unsterile things that earns all of it'),
      drift: points(3),
      driftM: z.number().min(0.002).max(0.1).default(0.02).describe('movement of the drape that earns nothing'),
      drops: points(4),
      dropShare: share(0.5).describe('part that each dropped thing costs'),
      smoothness: points(0),
      smoothAll: z.number().min(-20).max(-5).default(-7.5).describe('log dimensionless jerk that earns all of it'),
      smoothNone: z.number().min(-30).max(-6).default(-10.5),
    })
    .prefault({}),
  time: z.strictObject({ minutes: z.number().min(0).max(60).default(0).describe('time for the work without remedies; 0 takes the time foreseen') }).prefault({}),
  enoughWork: share(0.5).describe('part of the tasks that must be done for the other parts to count in full'),
});

/** What a scenario can give practice in. */
export const SKILLS = ['order', 'hands', 'cord', 'drape', 'steadiness', 'interruptions', 'recovery'] as const;
export type Skill = (typeof SKILLS)[number];
