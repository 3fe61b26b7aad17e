import { describe } from 'vitest';
import { playAll } from '../support/breakRun.ts';
import { PLACE_RUNS } from './runs/places.ts';

describe('A hand, an arm or a thing where it may not be', () => playAll(PLACE_RUNS));
