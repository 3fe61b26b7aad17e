import { describe } from 'vitest';
import { playAll } from '../support/breakRun.ts';
import { DRAPE_RUNS } from './runs/drape.ts';

describe('The drapes', () => playAll(DRAPE_RUNS));
