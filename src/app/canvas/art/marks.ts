import type { RoomPicture, SurfaceMark } from '../../../core/room/picture.ts';

/** How the surface with this id is shown now. */
export type MarkOf = (surface: string | undefined) => SurfaceMark;

/** Everything plain, for coaching that shows nothing. */
const allPlain: MarkOf = () => 'sterile';

export const marksOf = (picture: RoomPicture, shown: boolean): MarkOf =>
  shown ? (surface) => (surface === undefined ? 'sterile' : picture.marks.get(surface) ?? 'sterile') : allPlain;
