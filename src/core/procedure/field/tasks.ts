import type { Scenario } from '../../scenario/schema.ts';
import { FIELD_TASKS, type FieldTaskId } from '../observation.ts';

/**
 * A run in which one of these is missing cannot be met. Gel: sterile gel belongs on the skin before and during any such puncture
 * (MMWR 2022;71(48):1517-21). Ready: probe and needle at the site together is what the whole station leads to (common practice).
 */
const CRITICAL: readonly FieldTaskId[] = ['gel', 'ready'];

export const isCritical = (task: FieldTaskId): boolean => CRITICAL.includes(task);

/** Rubbish may go into the bin at any time (common practice: tidy as you go); everything else follows the whole chain before it. */
export const tasksBefore = (task: FieldTaskId): readonly FieldTaskId[] => (task === 'rubbish' ? [] : FIELD_TASKS.slice(0, FIELD_TASKS.indexOf(task)));

/** The tasks that a scenario asks for: all, but the rubbish only where there is some. */
export const tasksOf = (scenario: Scenario): readonly FieldTaskId[] => FIELD_TASKS.filter((task) => task !== 'rubbish' || scenario.items.some((item) => item.rubbish));
