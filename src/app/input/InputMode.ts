import { initialTransition, transition, type SnapshotFrom } from 'xstate';
import { inputMachine, type InputContext, type InputEvent } from './inputMachine.ts';

export type Mode = 'playing' | 'paused' | 'dialog';

/** The input machine with its present state; tells listeners when that changes. */
export class InputMode {
  private state: SnapshotFrom<typeof inputMachine> = initialTransition(inputMachine)[0];
  private readonly listeners = new Set<() => void>();

  get mode(): Mode {
    return this.state.value as Mode;
  }

  get playing(): boolean {
    return this.state.value === 'playing';
  }

  get context(): InputContext {
    return this.state.context;
  }

  send(event: InputEvent): void {
    const before = this.state;
    this.state = transition(inputMachine, before, event)[0];
    if (this.state !== before) for (const listener of this.listeners) listener();
  }

  subscribe(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }
}
