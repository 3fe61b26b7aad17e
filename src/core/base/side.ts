/** Left and right are the operator's own: the right hand stands at negative x, on the left of the screen. */
export type Side = 'left' | 'right';
export const SIDES: readonly Side[] = ['right', 'left'];
/** Sign of x on that side of the room. */
export const signOf = (side: Side): number => (side === 'left' ? 1 : -1);
export const otherSide = (side: Side): Side => (side === 'left' ? 'right' : 'left');
