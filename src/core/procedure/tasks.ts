import type { Scenario } from '../scenario/schema.ts';
import type { TaskId } from './observation.ts';

/** The tasks of the field in the order in which they should be done (common practice). */
export const TASK_ORDER: readonly TaskId[] = ['gel', 'view', 'park', 'anaesthetic', 'ready', 'rubbish'];

/**
 * A run in which one of these is missing cannot be met. Gel: sterile gel belongs on the skin before and during any such puncture
 * (MMWR 2022;71(48):1517-21). Ready: probe and needle at the site together is what the whole station leads to (common practice).
 */
const CRITICAL: readonly TaskId[] = ['gel', 'ready'];

export const isCritical = (task: TaskId): boolean => CRITICAL.includes(task);

/** Rubbish may go into the bin at any time (common practice: tidy as you go); everything else follows the whole chain before it. */
export const tasksBefore = (task: TaskId): readonly TaskId[] => (task === 'rubbish' ? [] : TASK_ORDER.slice(0, TASK_ORDER.indexOf(task)));

/** The tasks that a scenario asks for: all, but the rubbish only where there is some. */
export const tasksOf = (scenario: Scenario): readonly TaskId[] => TASK_ORDER.filter((task) => task !== 'rubbish' || scenario.items.some((item) => item.rubbish));
