import { problem, type Problem } from './problem.ts';
import type { Scenario } from './schema.ts';

/** Whether the parts of a rubric fit each other: something counts, and doing the right thing never costs more than not doing it. */
export function rubricChecks({ rubric }: Pick<Scenario, 'rubric'>): readonly Problem[] {
  const { points, breaks, handling } = rubric;
  const nothing = points.asepsis + points.procedure + points.handling + points.time === 0;
  const dear = (['critical', 'major', 'minor'] as const).filter((grade) => breaks[grade].putRight > breaks[grade].left);
  return [
    ...(nothing ? [problem('rubric.points.asepsis', '0', 'more than 0 there or in another part, so that there is something to earn')] : []),
    ...dear.map((grade) => problem(`rubric.breaks.${grade}.putRight`, String(breaks[grade].putRight), `${breaks[grade].left} at most, what the same break costs when it is left open`)),
    ...(handling.smoothNone >= handling.smoothAll ? [problem('rubric.handling.smoothNone', String(handling.smoothNone), `less than ${handling.smoothAll}, which earns all of it`)] : []),
  ];
}
