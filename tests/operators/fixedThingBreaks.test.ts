import { describe } from 'vitest';
import { playAll } from '../support/breakRun.ts';
import { FIXED_THING_RUNS } from './runs/fixedThings.ts';

describe('One touch of a fixed thing is one break', () => playAll(FIXED_THING_RUNS));
