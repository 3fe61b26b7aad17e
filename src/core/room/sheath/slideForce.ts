import { exp } from '../../base/portableMath.ts';

/**
 * Pull (N) that draws a film along a cord which turns by `turning` radians under it: F = F₀ e^(μ θ), the belt law (Euler 1769,
 * Eytelwein 1808). Over each bend the film presses on the cord with its own tension times the angle; the cord needs no film to keep
 * its shape, so its own tension adds nothing.
 * @param straightN pull on a straight cord, in newtons
 */
export const slideForceN = (straightN: number, friction: number, turning: number): number => straightN * exp(friction * turning);
