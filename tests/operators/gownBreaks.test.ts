import { describe } from 'vitest';
import { playAll } from '../support/breakRun.ts';
import { GOWN_RUNS } from './runs/gown.ts';

describe('Gowning and gloving', () => playAll(GOWN_RUNS));
