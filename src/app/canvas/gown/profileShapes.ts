/** Head and shoe of the operator from the side, facing right, in centimetres: the head from the middle of the face, the shoe from the floor. */
export const FACE = 'M-7 9C-9.6 4 -9.4 -3 -7 -7C-4 -11.6 2 -12.4 5 -11C7.4 -10 8.2 -7 8.4 -4.6C8.6 -2.4 10.6 -1.4 10.4 -.4C10.2 .6 8.8 .8 8.6 2C8.4 5 8.4 7.6 7.4 9Z';
export const NECK = 'M-5.6 -6C-5.6 -12 -6.4 -15 -8 -18L4.6 -18C4 -15 3.4 -12 3.6 -9Z';
export const MASK = 'M1.4 1.2C4 1.6 7 1.4 9.2 .6C10.8 -1.4 10.6 -6 8.4 -9.6C6.6 -12 4.4 -12.4 2.4 -11.6C.4 -8 .4 -2.4 1.4 1.2Z';
export const CAP = 'M8.4 4.2C7.6 10.6 3 14 -2 13.6C-8 13 -11.4 8.6 -10.6 3.2C-9.8 .4 -7 -.6 -5 .6C-1 3.6 4.4 4.6 8.4 4.2Z';
export const SHOE = 'M-9 0C-9.6 4 -9 8 -7 9L7 9C10 7.4 18 6 19 3C19.2 1.4 18.8 .4 18 0Z';
