// The scene “railway”: its pictures, drawn for Afterbell.
import { CLOUD, GULL, PEBBLES, ring, TUFT } from '../marks.js';
import type { Scene } from '../scene.js';

export const RAILWAY: Scene = {
  story: 'Drive the train to the station.',
  entry: [
    ['outline', 'M5.6 2.6C4.2 2.8 3.4 1 5 .6C6.2 -.2 7.4 .4 7.4 1.2C8.8 1 9 2.8 7.6 2.9Z'],
    ['ink', 'M5 4H8.6L8 7.6H5.6Z'],
    ['outline', 'M10 7.6C10 5.2 12.6 5.2 12.6 7.6Z'],
    ['outline', 'M5 7.4H14.4V13.6H5C3.2 12.6 3.2 8.4 5 7.4Z'],
    ['fine', 'M7.6 7.4V13.6M12 7.4V13.6'],
    ['outline', 'M14.4 4H20.4V13.6H14.4Z'],
    ['ink', 'M13.4 2.6H21.4V4.2H13.4Z'],
    ['outline', 'M16 6H18.8V9H16Z'],
    ['ink', 'M4 13.2H20.4V14.6H4ZM4 13.4L1.4 17H4.6Z'],
    ['outline', `${ring(7, 15.4, 2)}${ring(11.6, 15.4, 2)}`],
    ['outline', ring(17.4, 14.8, 2.6)],
    ['thick', 'M7 15.4H17.4'],
  ],
  exit: [
    ['outline', 'M4.8 8.6H19.2V16.4H4.8Z'],
    ['outline', 'M2.4 9L8.6 4.4H15.4L21.6 9Z'],
    ['outline', 'M9 6.4V2.8L12 .6L15 2.8V6.4Z'],
    ['outline', ring(12, 4.2, 1.5)],
    ['fine', 'M12 3.4V4.2L12.6 4.6M5.6 7.6H18.4'],
    ['ink', 'M10.4 16.4V12.4C10.4 10.4 13.6 10.4 13.6 12.4V16.4Z'],
    ['outline', 'M6.4 11H8.8V13.6H6.4ZM15.2 11H17.6V13.6H15.2Z'],
    ['fine', 'M7.6 11V13.6M16.4 11V13.6'],
    ['ink', 'M1.6 16.4H22.4V17.6H1.6Z'],
  ],
  tread: [['thick', 'M0 -3.4V3.4']],
  pace: 7,
  glade: [
    ['thick', 'M-3.4 .6L-4.6 5.4M3.4 .6L4.6 5.4'],
    ['outline', 'M-6 -3.4H6V.8H-6Z'],
    ['ink', 'M-4 -3.4H-1.6L-3.4 .8H-5.8ZM1.2 -3.4H3.6L1.8 .8H-.6ZM6 -3V.2L5.8 .8H4.6L6 -2.6Z'],
    ['ink', `${ring(-3.4, -5, 1.1)}${ring(3.4, -5, 1.1)}`],
  ],
  line: 'vine',
  tip: [
    ['outline', 'M-.9 6.4V2.6H.9V6.4Z'],
    ['outline', 'M0 -7C4.4 -7 6.6 -3.4 5.2 -.6C6 2 3 3.4 0 3.2C-3 3.4 -6 2 -5.2 -.6C-6.6 -3.4 -4.4 -7 0 -7Z'],
    ['fine', 'M-2.4 -2.6C-1.6 -1.8 -.8 -1.8 0 -2.4M.6 .8C1.4 1.4 2.4 1.2 3 .6'],
  ],
  sky: [CLOUD, GULL, CLOUD],
  ground: [TUFT, PEBBLES, TUFT],
};
