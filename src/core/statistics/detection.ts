import { probit } from './normal.ts';

/** Sensitivity and bias of a yes/no judgement, from rates strictly between 0 and 1. */
export interface Detection {
  /** d′ = z(H) − z(F). */
  readonly dPrime: number;
  /** c = −(z(H) + z(F)) / 2. */
  readonly criterion: number;
}

/** Signal detection for one observer with equal-variance normal evidence (Macmillan and Creelman). */
export function detection(hitRate: number, falseAlarmRate: number): Detection {
  const [hit, alarm] = [probit(hitRate), probit(falseAlarmRate)];
  return { dPrime: hit - alarm, criterion: -(hit + alarm) / 2 };
}

/** Rate with the log-linear correction, which keeps it off 0 and 1: (count + 0.5) / (of + 1), always applied (Hautus 1995). */
export const logLinearRate = (count: number, of: number): number => (count + 0.5) / (of + 1);
