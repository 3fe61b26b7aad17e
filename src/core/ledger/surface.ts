/** State of a surface: sterile, prepared (antiseptic skin) or unsterile. */
export type SurfaceState = 'sterile' | 'prepared' | 'unsterile';

/** What a surface must be to do its work: sterile, prepared, or nothing at all (a rail). */
export type SurfaceRole = 'sterile' | 'prepared' | 'none';

/** How near to the patient's blood a surface is; a break has the reach of the nearest surface that it got to. */
export type Reach = 'none' | 'field' | 'device' | 'site';

/** What a surface is, for the rules. */
export type SurfaceKind =
  | 'glove'
  | 'sleeve'
  | 'outerSleeve'
  | 'gownFront'
  | 'face'
  | 'rail'
  | 'pole'
  | 'machine'
  | 'bed'
  | 'floor'
  | 'kitTable'
  | 'tableEdge'
  | 'bin'
  | 'patientSkin'
  | 'preparedSkin'
  | 'site'
  | 'drapeTop'
  | 'drapeUnder'
  | 'sheath'
  | 'sheathTail'
  | 'bareCord'
  | 'probeSheath'
  | 'item'
  | 'needle'
  | 'cover'
  | 'bareHand'
  | 'bareProbe'
  | 'sheathInside'
  | 'unsterileItem'
  | 'knitCuff'
  | 'passedCuff'
  | 'gownInside'
  | 'gloveInside'
  | 'ownSkin'
  | 'ownClothes'
  | 'wrapper'
  | 'cardEnd'
  | 'person';

/**
 * The smallest thing that is sterile or not. `thing` names the object as a whole with its generation (`glove.left#2`), `part` the
 * stretch of it; the id is `thing:part`. A replaced object brings new surfaces, and the old ones keep their history.
 */
export interface Surface {
  readonly id: string;
  readonly thing: string;
  readonly part: string;
  readonly kind: SurfaceKind;
  readonly role: SurfaceRole;
  /** State when it came into the room. */
  readonly initial: SurfaceState;
  readonly reach: Reach;
  /** What a colleague would call it: "left glove, fingers". */
  readonly words: string;
}
