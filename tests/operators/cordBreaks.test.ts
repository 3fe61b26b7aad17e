import { describe } from 'vitest';
import { playAll } from '../support/breakRun.ts';
import { CORD_RUNS } from './runs/cord.ts';

describe('The cord', () => playAll(CORD_RUNS));
