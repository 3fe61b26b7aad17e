/** Steps per second of the simulation; the one unit of time inside the core is the step. */
export const STEPS_PER_SECOND = 120;
/** Length of a step in seconds. */
export const STEP_SECONDS = 1 / STEPS_PER_SECOND;

/** Whole steps nearest to a time in seconds. */
export const secondsToSteps = (seconds: number): number => Math.round(seconds * STEPS_PER_SECOND);
/** Time in seconds at the beginning of a step. */
export const stepsToSeconds = (steps: number): number => steps / STEPS_PER_SECOND;
