import { Sheet } from '../parts/Sheet.tsx';
import { KeyClusters } from './KeyClusters.tsx';

/** All controls on one sheet. */
export const HelpSheet = ({ onClose }: { readonly onClose: () => void }) => (
  <Sheet title="Controls" wide onClose={onClose}>
    <KeyClusters />
    <div class="help-columns">
      <section>
        <h3>Mouse</h3>
        <p>The pointer leads the active hand. A hand never jumps: it moves as the pointer moves, and comes to the pointer on the way.</p>
        <p>Click: the hand closes and keeps hold; click again: it opens. Press and drag: it holds while you drag.</p>
        <p>Click the other hand to lead it. What the first one holds, it keeps.</p>
        <p>Wheel turns the wrist. Right button uses what is held. Ctrl and wheel look closer, the middle button moves the view.</p>
      </section>
      <section>
        <h3>Touch</h3>
        <p>One finger for each hand; the nearest hand takes the finger and floats above it.</p>
        <p>A short tap on a hand closes or opens it. The buttons in the lower corners grip, use and turn; each corner serves the hand on that side.</p>
      </section>
      <section>
        <h3>Pad</h3>
        <p>One stick for each hand, its trigger closes or opens it. Hold a bumper and the stick turns the wrist.</p>
        <p>Use: the cross, down, for the hand on the left; the lowest face button for the other. The right face button: I broke sterility. Start: pause.</p>
      </section>
      <section>
        <h3>Breaks and remedies</h3>
        <p>Say so when sterility is broken, then choose the remedy. Hands must be still and clear of the field while it is done.</p>
        <p>On the screen left and right are exchanged: you look at the operator, whose right hand is on your left.</p>
      </section>
    </div>
    <div class="sheet-actions">
      <button class="main-button" autofocus onClick={onClose}>
        Back
      </button>
    </div>
  </Sheet>
);
