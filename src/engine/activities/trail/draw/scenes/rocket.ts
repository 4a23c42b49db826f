// The scene “rocket”: its pictures, drawn for Afterbell.
import { ring, SPARK, star, TWINKLE } from '../marks.js';
import type { Scene, Sketched } from '../scene.js';

const MOONLET: Sketched = [
  ['fine', ring(0, 0, 1.9)],
  ['fine', ring(-0.5, -0.5, 0.4)],
  ['fine', ring(0.7, 0.5, 0.3)],
];

export const ROCKET: Scene = {
  story: 'Fly the rocket to the planet with the ring.',
  entry: [
    ['outline', 'M9.8 13.4C9 15.4 10.8 16.2 12 18C13.2 16.2 15 15.4 14.2 13.4Z'],
    [
      'ink',
      'M8.4 8.8C6 10.2 4.8 12.4 4.8 15.2C6.2 14 7.6 13.4 9 13.2ZM15.6 8.8C18 10.2 19.2 12.4 19.2 15.2C17.8 14 16.4 13.4 15 13.2Z',
    ],
    ['outline', 'M12 .6C16 3.6 17 8.6 15.4 13.4H8.6C7 8.6 8 3.6 12 .6Z'],
    ['ink', 'M12 .6C13.4 1.7 14.5 3 15.2 4.6H8.8C9.5 3 10.6 1.7 12 .6Z'],
    ['outline', ring(12, 7.8, 1.9)],
    ['fine', 'M8.3 11.6H15.7'],
    ['fine', 'M2.6 3V5.4M1.4 4.2H3.8M21.2 6V8.4M20 7.2H22.4'],
  ],
  exit: [
    ['fine', 'M3 2.2V4.4M1.9 3.3H4.1M20.6 13.8V16M19.5 14.9H21.7'],
    ['outline', 'M1.5 12.4A11 3.3 -18 0 1 22.5 5.6A11 3.3 -18 0 1 1.5 12.4Z'],
    ['outline', ring(12, 9, 6.4)],
    ['fine', `${ring(9.6, 6, 1.1)}${ring(14.4, 5.2, 0.7)}${ring(13.6, 13, 1.2)}`],
    [
      'outline',
      'M5.4 9.4C2.6 11 .9 12.5 1.3 13.2C2.3 14.9 9.6 13.2 15 10.6C20.4 8 23.4 5.6 22.7 4.8C22.3 4.2 20.4 4.4 17.8 5.2C19.6 5 20.6 5.2 20.3 5.8C19.8 6.8 17 8.2 13.6 9.4C9.6 10.9 5 11.8 4.4 11C4.2 10.7 4.6 10.1 5.4 9.4Z',
    ],
  ],
  tread: [
    ['ink', 'M0 -2.6C.3 -.6 .6 -.3 2.6 0C.6 .3 .3 .6 0 2.6C-.3 .6 -.6 .3 -2.6 0C-.6 -.3 -.3 -.6 0 -2.6Z'],
  ],
  pace: 11,
  glade: [
    ['outline', ring(0, 0, 5.4)],
    ['fine', `${ring(-1.8, -1.6, 1.3)}${ring(2.2, 0.8, 1)}${ring(-0.8, 2.8, 0.7)}`],
  ],
  line: 'beads',
  tip: [
    ['outline', star(5, 7.4, 3.3)],
    ['ink', ring(0, 0, 1)],
  ],
  sky: [TWINKLE, SPARK, MOONLET],
  ground: [SPARK, TWINKLE, MOONLET],
};
