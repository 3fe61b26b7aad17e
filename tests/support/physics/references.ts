/** Closed forms and textbook equations that the physics tests compare with. SI units. */

export const GRAVITY = 9.81;

/** Sag of a catenary of length L over the span W (m): 2a sinh(W/2a) = L, sag = a (cosh(W/2a) − 1). Any statics textbook, e.g. Hibbeler, "Cables". */
export function catenarySag(span: number, length: number): number {
  let low = 0.05;
  let high = 50;
  for (let k = 0; k < 200; k++) {
    const a = (low + high) / 2;
    if (2 * a * Math.sinh(span / 2 / a) > length) low = a;
    else high = a;
  }
  return low * (Math.cosh(span / 2 / low) - 1);
}

export interface HangingProbe {
  readonly cordLength: number;
  readonly massPerM: number;
  readonly probeKg: number;
  /** From the cord's end to the probe's centre of mass (m), and the moment of inertia about that centre (kg m²). */
  readonly arm: number;
  readonly inertia: number;
}

/**
 * Period (s) of the slowest small swing of a rigid probe on a heavy cord. Along the cord, s up from its lower end, tension
 * T = g (M + λ s) and (T y′)′ + ω² λ y = 0 (hanging chain, Lamb, Hydrodynamics/Dynamics). At the end the probe obeys
 * −ω² M (y + d φ) = T y′ and −ω² I φ = −M g d (φ + y′). Shooting: the lowest ω for which y = 0 at the top.
 */
export function swingPeriod(probe: HangingProbe): number {
  let low = 0.1;
  while (topOffset(probe, low + 0.01) > 0) low += 0.01;
  let high = low + 0.01;
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2;
    if (topOffset(probe, middle) > 0) low = middle;
    else high = middle;
  }
  return (2 * Math.PI) / low;
}

/** Offset of the cord at its top for a swing of rate ω whose lower end hangs at y = positive; midpoint integration. */
function topOffset({ cordLength, massPerM, probeKg, arm, inertia }: HangingProbe, omega: number): number {
  const square = omega * omega;
  let slope = -1;
  const turn = (arm * probeKg * GRAVITY * slope) / (square * inertia - arm * probeKg * GRAVITY);
  let y = (-GRAVITY * slope) / square - arm * turn;
  let pull = probeKg * GRAVITY * slope; // T y′
  const pieces = 4000;
  const d = cordLength / pieces;
  for (let k = 0; k < pieces; k++) {
    const tension = GRAVITY * (probeKg + massPerM * (k + 0.5) * d);
    const middle = y + (slope * d) / 2;
    pull -= square * massPerM * middle * d;
    slope = pull / tension;
    y += slope * d;
  }
  return y;
}

/** Capstan equation (Euler–Eytelwein): ratio of the pulls on a rope about to slip over an angle of π. */
export const capstanRatio = (friction: number): number => Math.exp(friction * Math.PI);

/** Stopping distance (m) under Coulomb friction: v² / (2 µ g). */
export const stoppingDistance = (speed: number, friction: number): number => (speed * speed) / (2 * friction * GRAVITY);

/** Force (N) that peels a tape of given strength at an angle: F (1 − cos θ) = R (Kendall, J. Phys. D 8, 1449 (1975), inextensible limit). */
export const peelForce = (strengthN: number, angle: number): number => strengthN / (1 - Math.cos(angle));
