import { handThumbnail, type ThumbnailLook } from '../hand/handThumbnail.ts';
import { NO_MARKS } from '../hand/paintHand.ts';
import { swatch } from '../swatches.ts';

const LOOKS: readonly ThumbnailLook[] = [
  { pose: 'syringe', side: 'right', holds: 'needleSyringe', marks: NO_MARKS, active: true },
  { pose: 'probe', side: 'left', holds: 'probe', dress: { bands: [0.024, 0.124], bubbles: [], torn: false }, marks: { ...NO_MARKS, cuff: 'became' }, active: false },
  { pose: 'open', side: 'right', holds: null, marks: { ...NO_MARKS, back: 'became', palm: 'became' }, active: false },
  { pose: 'pinch', side: 'left', holds: 'gelPacket', marks: { ...NO_MARKS, fingers: 'became' }, active: true },
  { pose: 'pinch', side: 'right', holds: 'mouth', marks: NO_MARKS, active: false },
  { pose: 'pinch', side: 'left', holds: 'end', marks: NO_MARKS, active: false },
  { pose: 'pinch', side: 'right', holds: 'gauze', marks: NO_MARKS, active: false },
];

/** Hands for cards and the swatches of the legend, on the background of a panel. */
export function showCards(host: HTMLElement): void {
  host.style.background = '#FBFBF8';
  for (const look of LOOKS) host.append(handThumbnail(look), handThumbnail(look, 184, 140));
  const legend = document.createElement('p');
  legend.innerHTML = (['sterile', 'unsterile', 'became', 'prepared'] as const).map((mark) => swatch(mark)).join(' ');
  host.append(legend);
}
