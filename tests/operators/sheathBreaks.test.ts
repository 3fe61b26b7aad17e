import { describe } from 'vitest';
import { playAll } from '../support/breakRun.ts';
import { SHEATH_RUNS } from './runs/sheath.ts';

describe('Loading the sheath: one mistake, and all that it breaks', () => playAll(SHEATH_RUNS));
