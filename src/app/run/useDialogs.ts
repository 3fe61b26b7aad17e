import { useState } from 'preact/hooks';
import type { LiveRun } from './LiveRun.ts';

export type Dialog = 'help' | 'end';

export interface Dialogs {
  readonly shown: Dialog | null;
  open(dialog: Dialog): void;
  close(): void;
}

/** The sheet over the room, during which the run stands. */
export function useDialogs(live: LiveRun): Dialogs {
  const [shown, setShown] = useState<Dialog | null>(null);
  return {
    shown,
    open: (dialog) => {
      live.mode.send({ type: 'dialog.open' });
      setShown(dialog);
    },
    close: () => {
      setShown(null);
      live.mode.send({ type: 'dialog.close' });
    },
  };
}
