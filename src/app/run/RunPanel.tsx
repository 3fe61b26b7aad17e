import { KeyCap } from '../parts/KeyCap.tsx';
import { HandCard } from './HandCard.tsx';
import type { LiveRun } from './LiveRun.ts';
import { NextList } from './NextList.tsx';
import { sayBroken } from './pageOrders.ts';
import { RemedyList } from './RemedyList.tsx';
import { RequestList } from './RequestList.tsx';
import type { DrawHand } from './stagePort.ts';
import { TouchingNow } from './TouchingNow.tsx';
import type { Remedies } from './useRemedies.ts';

interface RunPanelProps {
  readonly live: LiveRun;
  readonly drawHand: DrawHand | null;
  readonly remedies: Remedies;
}

/** The right column: what the hands hold, saying that sterility was broken, remedies, requests, touches. */
export const RunPanel = ({ live, drawHand, remedies }: RunPanelProps) => (
  <div class="panel-body">
    <section class="panel-part" aria-labelledby="hands-head">
      <h2 id="hands-head">In your hands</h2>
      <HandCard live={live} side="right" drawHand={drawHand} />
      <HandCard live={live} side="left" drawHand={drawHand} />
    </section>
    <button class="main-button notice" onClick={() => sayBroken(live)}>
      I broke sterility <KeyCap>B</KeyCap>
    </button>
    <RemedyList live={live} remedies={remedies} />
    <RequestList live={live} />
    <NextList live={live} />
    <TouchingNow live={live} />
  </div>
);
