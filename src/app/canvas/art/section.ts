import type { Pen } from '../pen/pen.ts';

const FAT = '#F1DDBD';
const MUSCLE = '#D6A498';
const MUSCLE_LINE = '#A36A5D';
const BONE = '#F3E9D2';
const BONE_LINE = '#9A8A66';
const VEIN = '#7F9CC4';
const VEIN_LINE = '#3F5F8F';
const ARTERY = '#C46A5E';
const ARTERY_LINE = '#84352B';
const NERVE = '#E3CB86';
const NERVE_LINE = '#93762E';

/** What lies under the skin at the root of the neck, in centimetres; soft and quiet, never a signal. */
export function paintSection(cm: Pen): void {
  cm.path('M-21.2 95C-21 99 -19.6 101.4 -16.2 103.4C-12.4 105.7 -9 107.6 -5.8 108.4C-3 109 3 109 5.8 108.4C9 107.6 12.4 105.7 16.2 103.4C19.6 101.4 21 99 21.2 95Z',
    { fill: FAT, line: '#C49A75', weight: 'h', alpha: 0.92 });
  for (const side of [-1, 1]) {
    const mirrored = cm.in([side, 0, 0, 1, 0, 0]);
    paintMuscles(mirrored);
    paintShoulder(mirrored);
    paintVessels(mirrored);
  }
  paintVertebra(cm);
  paintAirway(cm);
}

/** Shoulder muscle, trapezius, deep extensors, scalenes, long muscle of the neck, sternocleidomastoid. */
const MUSCLES = [
  'M20.6 95C20.4 99.6 18.6 101.6 15.6 102.6C14 102.8 13.6 101.4 14.2 99.8L14.4 95Z',
  'M1 95.6C5 95 10 95.1 13 95.6C13.8 97.6 12.6 100.6 10 101.6C7 102 6 99.6 3 98.6C1.6 98.2 1 97 1 95.6Z',
  'M2.2 99C4.4 98.9 6.2 100.2 6.6 102C6 103.2 4 102.4 2.6 101Z',
  'M3 103.4C5 103 7.6 103.6 8.6 105C7.8 106.2 4.6 105.8 3 104.6Z',
  'M.6 103.5C1.4 103.3 2.4 103.6 2.5 104.3C2 104.8 1 104.6 .6 104.2Z',
  'M2 108.3C3.6 108.7 6.2 108.1 8.2 106.4C8.6 105.8 8 105.7 7.2 106.2C6 107.2 4 107.7 2.4 107.6C1.6 107.6 1.5 108.1 2 108.3Z',
];

function paintMuscles(cm: Pen): void {
  for (const muscle of MUSCLES) cm.path(muscle, { fill: MUSCLE, line: MUSCLE_LINE, weight: 'h', alpha: 0.92 });
  cm.path('M19 96.4C18.8 98.6 18 100.2 16.4 101.6M3.4 96.4C6 96.2 9 96.4 11.6 97M3.6 97.4C6.4 97.2 9 97.8 11.4 98.6M4.2 98.4C6.6 98.6 8.8 99.4 10.4 100.4',
    { line: MUSCLE_LINE, weight: 'h', alpha: 0.3 });
}

/** Head of the humerus and the socket of the shoulder blade. */
function paintShoulder(cm: Pen): void {
  cm.ellipse(16.9, 98.9, 2.5, 2.5, { fill: BONE, line: BONE_LINE, weight: 'd' });
  cm.ellipse(16.9, 98.9, 1.9, 1.9, { line: BONE_LINE, weight: 'h', alpha: 0.35 });
  cm.path('M14 100.4C13.4 99 13.4 98 14 96.8L12 96.2C11.4 97.6 11.6 98.8 12.2 99.6Z', { fill: BONE, line: BONE_LINE, weight: 'h' });
}

/** Thyroid lobe, carotid artery, vagus nerve, internal and external jugular vein, roots of the plexus. */
function paintVessels(cm: Pen): void {
  cm.path('M.9 106.9C1.7 107.5 2.5 107 2.5 106C2.4 105.2 1.6 105 1.1 105.6Z', { fill: '#C98F86', line: MUSCLE_LINE, weight: 'h' });
  cm.ellipse(3.3, 106.25, 0.62, 0.6, { fill: ARTERY, line: ARTERY_LINE, weight: 'd' });
  cm.ellipse(4.75, 106.95, 0.92, 0.6, { fill: VEIN, line: VEIN_LINE, weight: 'd' });
  cm.ellipse(7.7, 107.25, 0.22, 0.16, { fill: VEIN, line: VEIN_LINE, weight: 'h' });
  for (const [x, y, r] of [[3.9, 105.35, 0.22], [5.6, 104.4, 0.26], [6.4, 104.6, 0.22]] as const) {
    cm.ellipse(x, y, r, r, { fill: NERVE, line: NERVE_LINE, weight: 'h' });
  }
}

function paintVertebra(cm: Pen): void {
  cm.path('M-1.9 102.9C-1 103.5 1 103.5 1.9 102.9C2.2 102 2 101.3 1.5 100.9C2.6 101 4 101.3 4.4 100.7C4.4 100 3 100 2 99.8C1.4 99.2 .9 98.7 .6 98.4L.4 96.6C.2 96.2 -.2 96.2 -.4 96.6L-.6 98.4C-.9 98.7 -1.4 99.2 -2 99.8C-3 100 -4.4 100 -4.4 100.7C-4 101.3 -2.6 101 -1.5 100.9C-2 101.3 -2.2 102 -1.9 102.9Z',
    { fill: BONE, line: BONE_LINE, weight: 'd' });
  cm.ellipse(0, 100.1, 1.05, 0.72, { fill: '#F6EFE2', line: BONE_LINE, weight: 'h' });
  cm.ellipse(0, 100.1, 0.62, 0.42, { fill: '#E9D9A8', line: NERVE_LINE, weight: 'h' });
}

/** Oesophagus behind the windpipe. */
function paintAirway(cm: Pen): void {
  cm.ellipse(0.75, 104.15, 0.8, 0.36, { fill: '#D9A79A', line: MUSCLE_LINE, weight: 'h' });
  cm.path('M-1.06 106.1C-1.06 107.2 -.5 107.6 0 107.6C.5 107.6 1.06 107.2 1.06 106.1C1.06 105.3 .8 104.9 .6 104.8L-.6 104.8C-.8 104.9 -1.06 105.3 -1.06 106.1Z', { fill: '#CBD5DA', line: '#6A7E89', weight: 'd' });
  cm.ellipse(0, 106.15, 0.72, 0.86, { fill: '#F4F7F8', line: '#8C9CA5', weight: 'h' });
}
