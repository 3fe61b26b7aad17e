import type { Command } from '../../core/commands/command.ts';

/** Everything a person does between two steps, in order; taken whole by the next step. */
export class CommandQueue {
  private waiting: Command[] = [];

  push(command: Command): void {
    this.waiting.push(command);
  }

  /** Hands over what has been queued and starts empty again. */
  take(): readonly Command[] {
    const taken = this.waiting;
    this.waiting = [];
    return taken;
  }
}
