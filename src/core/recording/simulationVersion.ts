/**
 * Number of the simulation's behaviour. Raised with every change after which the same commands may give other touches, breaks or
 * numbers: a run recorded under another number can be looked at but not verified or continued.
 */
export const SIMULATION_VERSION = 4;
