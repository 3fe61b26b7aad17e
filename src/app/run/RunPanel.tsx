import type { RemedyId, RequestId } from '../../core/commands/command.ts';
import { KeyCap } from '../parts/KeyCap.tsx';
import { HandCard } from './HandCard.tsx';
import type { LiveRun } from './LiveRun.ts';
import type { RemedyChoice } from './remedyChoices.ts';
import { RemedyList } from './RemedyList.tsx';
import { RequestList } from './RequestList.tsx';
import type { DrawHand } from './stagePort.ts';
import { TouchingNow } from './TouchingNow.tsx';

interface RunPanelProps {
  readonly live: LiveRun;
  readonly drawHand: DrawHand | null;
  readonly choosing: RemedyId | null;
  readonly onNotice: () => void;
  readonly onRemedy: (remedy: RemedyId) => void;
  readonly onChoice: (choice: RemedyChoice) => void;
  readonly onBack: () => void;
  readonly onAsk: (request: RequestId) => void;
}

/** The right column: what the hands hold, saying that sterility was broken, remedies, requests, touches. */
export function RunPanel(props: RunPanelProps) {
  const { live } = props;
  return (
    <div class="panel-body">
      <section class="panel-part" aria-labelledby="hands-head">
        <h2 id="hands-head">In your hands</h2>
        <HandCard live={live} side="right" drawHand={props.drawHand} />
        <HandCard live={live} side="left" drawHand={props.drawHand} />
      </section>
      <button class="main-button notice" onClick={props.onNotice}>
        I broke sterility <KeyCap>B</KeyCap>
      </button>
      <RemedyList live={live} choosing={props.choosing} onRemedy={props.onRemedy} onChoice={props.onChoice} onBack={props.onBack} />
      <RequestList onAsk={props.onAsk} />
      <TouchingNow live={live} />
    </div>
  );
}
