import type { Command, RequestId } from '../../src/core/commands/command.ts';
import { isFreeFor } from '../../src/core/room/assistant/isFreeFor.ts';
import type { Run } from '../../src/core/run/run.ts';
import { Operator } from './operator.ts';

/** Longest that the operator waits for a request to fall due (s): gel runs down that long. */
const WAITS_S = 8;

/** An operator who asks for nothing before something is due, and writes down each request as it falls due, and each that is sent with what was due then. */
export class PromptedOperator extends Operator {
  /** Requests that fell due, one after the other, each time that they did. */
  readonly due: RequestId[] = [];
  readonly asked: { readonly request: RequestId; readonly told: RequestId | null }[] = [];

  constructor(run: Run) {
    super(run);
    let before: RequestId | null = null;
    this.watchLeast(() => {
      const now = this.dueNow;
      if (now !== null && now !== before) this.due.push(now);
      before = now;
      return 0;
    });
  }

  override send(command: Command): this {
    if (command.type === 'ask') {
      for (let s = 0; s < WAITS_S && this.dueNow === null; s += 0.1) this.wait(0.1);
      this.asked.push({ request: command.request, told: this.dueNow });
    }
    return super.send(command);
  }

  /** What the assistant is to be asked for and free to do. */
  get dueNow(): RequestId | null {
    const { nextRequest, room } = this.run;
    return nextRequest !== null && isFreeFor(nextRequest, room.assistant.look().doing) ? nextRequest : null;
  }
}
