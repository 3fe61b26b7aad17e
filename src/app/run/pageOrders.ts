import type { PageOrder } from '../input/KeyboardDriver.ts';
import { SAY_FIELD } from './SayField.tsx';
import { canBeAsked } from './requestsIn.ts';
import type { LiveRun } from './LiveRun.ts';
import type { Dialogs } from './useDialogs.ts';
import type { Remedies } from './useRemedies.ts';
import type { Room } from './useRoom.ts';

/** The operator says that sterility was broken. */
export function sayBroken(live: LiveRun): void {
  live.hands.order({ type: 'notice' });
  live.say('You said so. Choose the remedy.');
}

/** Does what a key or a button of the pad asks of the page. */
export function obey(order: PageOrder, live: LiveRun, room: Room, remedies: Remedies, dialogs: Dialogs): void {
  switch (order.kind) {
    case 'notice':
      return sayBroken(live);
    case 'remedy':
      return remedies.digit(order.digit, order.remedy);
    case 'ask':
      return canBeAsked(order.request, live.run.scenario) ? live.hands.order({ type: 'ask', request: order.request }) : undefined;
    case 'answer':
      return live.hands.order({ type: 'answer', how: order.how });
    case 'say':
      return document.getElementById(SAY_FIELD)?.focus();
    case 'pause':
      return live.mode.send({ type: live.mode.playing ? 'pause' : 'resume' });
    case 'help':
      return dialogs.shown === null ? dialogs.open('help') : dialogs.close();
    case 'zoom':
      return room.zoom(order.factor);
    case 'frame':
      return room.frame(order.framing);
  }
}
