import type { RunFile } from '../../core/recording/recording.ts';

const PACE: Readonly<Record<number, string>> = { 1: 'normal pace', 2: 'half pace', 4: 'quarter pace' };

/** The paces at which a run was played, from its commands. */
export function paceWords(file: Pick<RunFile, 'commands'>): string {
  const slowdowns = new Set<number>();
  for (const { commands } of file.commands) for (const command of commands) if (command.type === 'pace') slowdowns.add(command.slowdown);
  if (slowdowns.size === 0) return PACE[1]!;
  return [...slowdowns].map((slowdown) => PACE[slowdown]).join(' and ');
}
