/** How long the probe must hang over the mouth before it is said so, in seconds; it swings a little beside it and back. */
export const OVER_MOUTH_S = 0.05;
/** How long it may then be beside the mouth and still be said to hang over it, in seconds: half a period of a pendulum of 0.32 m, as long as it hangs, is π √(L / g) = 0.57 s. */
export const OVER_MOUTH_GAP_S = 0.6;
/** How long the operator must hold the probe through the film once the assistant has let go of it, in seconds: it is in the hand, not on its way through it. */
export const TAKEN_S = 0.5;
/** Part of the probe's face that may see no picture while it still counts as free of air, 0 to 1. */
export const FACE_CLEAR = 0.05;
/** How long the face must be free of air, in seconds, so that a bubble on its way back is not overlooked. */
export const FACE_CLEAR_S = 1;
/** Part of the face without a picture from which on the air counts as come back, 0 to 1. */
export const FACE_SPOILED = 0.3;
/** Part of a loose sheath that must be gathered before it can be opened, 0 to 1. */
export const GATHERED_ENOUGH = 0.9;
/** A laid-down probe that nobody holds and that does not lie still for longer than this has slid off, in seconds; a cough of the patient shakes it for less. */
export const SLIDING_S = 1;
