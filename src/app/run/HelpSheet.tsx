import { Sheet } from '../parts/Sheet.tsx';
import { KeyClusters } from './KeyClusters.tsx';

/** All controls on one sheet. */
export const HelpSheet = ({ onClose }: { readonly onClose: () => void }) => (
  <Sheet title="Controls" wide onClose={onClose}>
    <div class="help-columns">
      <section>
        <h3>Mouse</h3>
        <p>The pointer leads the active hand. The hand never jumps: it moves as the pointer moves and comes to it on the way. A quick flick, to the panel say, leaves it where it is.</p>
        <p>Click: the hand closes and stays closed; click again: it opens. Press and drag: it holds while you drag.</p>
        <p>Click the other hand to lead it; what the first one holds, it keeps.</p>
        <p>Wheel: turn the wrist. Right button: use what is held (squeeze, inject). Ctrl and wheel: closer or wider. Middle button: move the view.</p>
      </section>
      <section>
        <h3>Touch</h3>
        <p>One finger for each hand. The nearest hand takes the finger and floats above it.</p>
        <p>A short tap on a hand closes or opens it. The buttons in the lower corners grip, use and turn the hand on that side.</p>
      </section>
      <section>
        <h3>Pad</h3>
        <p>One stick for each hand; its trigger closes or opens it. Bumper held: the stick turns the wrist.</p>
        <p>Use: direction pad down for the hand on the left, lowest face button for the other. Right face button: I broke sterility. Start: pause.</p>
      </section>
      <section>
        <h3>Breaks and remedies</h3>
        <p>Say so when sterility is broken, then choose the remedy. It goes on only while the hands are empty, still and clear of the field.</p>
        <p>You look at the operator, whose right hand is on your left.</p>
        <h3 class="help-below">The next hold</h3>
        <p>Shown coaching marks it: two arcs round a dot to grip or squeeze, a ring to go to, dots along a way. The panel tells it in words.</p>
      </section>
    </div>
    <KeyClusters />
  </Sheet>
);
