import type { ItemPicture, RoomPicture } from '../../../core/room/picture.ts';

/** What the probe sees, as numbers for the picture on the screen. */
export interface UltrasoundView {
  /** 0 nothing but black, 1 full contact: the probe lies on the skin with gel under it. */
  readonly contact: number;
  /** Place of the vein's middle across the picture, −1 left edge … 1 right edge. */
  readonly veinAcross: number;
  readonly arteryAcross: number;
  /** Depth of the middle as part of the picture's depth. */
  readonly veinDepth: number;
  readonly arteryDepth: number;
  /** Where air under the film lets no sound through: from and to, −1 left edge … 1 right edge of the face, in order. */
  readonly shadows: readonly (readonly [from: number, to: number])[];
}

/** Half the width that the probe shows at the depth of the vessels, in metres. */
const HALF_WIDTH_M = 0.022;
/** Carotid artery from the vein, towards the midline, in metres. */
const ARTERY_FROM_VEIN_M = 0.0145;
/** The face of the probe may be this far above the skin and still couple, in metres. */
const COUPLING_M = 0.014;
/** The face of the probe lies this far from its origin, along its axis, in metres. */
const PROBE_FACE_M = 0.062;
/** Half the width of its face, in metres. */
const FACE_HALF_M = 0.019;

/**
 * Finds what the screen shows: the vein lies under the site, the artery nearer to the midline. The picture fades as the face leaves
 * the skin or tilts away from it.
 */
export function ultrasoundView(picture: RoomPicture): UltrasoundView {
  const probe = picture.items.find(({ kind }) => kind === 'probe');
  const site = picture.scenario.room.patient.siteXM + middleOf(picture.patientOutline);
  if (probe === undefined || probe.gone) return { contact: 0, veinAcross: 0, arteryAcross: 0, veinDepth: 0.33, arteryDepth: 0.45, shadows: [] };
  const faceX = probe.x + probe.c * PROBE_FACE_M;
  const faceY = probe.y + probe.s * PROBE_FACE_M;
  const gap = Math.abs(faceY - skinHeight(picture, faceX));
  const down = Math.max(0, -probe.s);
  const contact = Math.max(0, Math.min(1, 2 * (1 - gap / COUPLING_M))) * Math.max(0, (down - 0.5) * 2) * (0.35 + 0.65 * picture.gelOnSite);
  // The left of the picture is the operator's left, so that hand and picture move alike.
  const veinAcross = (faceX - site) / HALF_WIDTH_M;
  return {
    contact: Math.abs(site - faceX) > 0.09 ? contact * 0.5 : contact,
    veinAcross,
    arteryAcross: veinAcross - (site < 0 ? 1 : -1) * (ARTERY_FROM_VEIN_M / HALF_WIDTH_M),
    veinDepth: 0.33,
    arteryDepth: 0.45,
    shadows: shadowsOf(probe),
  };
}

/** Left and right as for the vessels: the picture is seen as the operator sees the field. */
function shadowsOf({ dress, s }: ItemPicture): UltrasoundView['shadows'] {
  const way = s < 0 ? -1 : 1;
  return (dress?.bubbles ?? []).flatMap(({ at, lengthM }) => {
    const middle = (way * at) / FACE_HALF_M;
    const half = lengthM / 2 / FACE_HALF_M;
    const [from, to] = [Math.max(-1, middle - half), Math.min(1, middle + half)];
    return from < to ? [[from, to] as const] : [];
  }).sort(([a], [b]) => a - b);
}

function middleOf(outline: RoomPicture['patientOutline']): number {
  let low = Infinity;
  let high = -Infinity;
  for (const [x] of outline) { low = Math.min(low, x); high = Math.max(high, x); }
  return (low + high) / 2;
}

/** Height of the skin under x, in metres; far below where there is none. */
function skinHeight({ skinX, skinY }: RoomPicture, x: number): number {
  for (let i = 0; i + 1 < skinX.length; i++) {
    const [a, b] = [skinX[i]!, skinX[i + 1]!];
    if (x < Math.min(a, b) || x > Math.max(a, b) || a === b) continue;
    return skinY[i]! + ((skinY[i + 1]! - skinY[i]!) * (x - a)) / (b - a);
  }
  return -Infinity;
}
