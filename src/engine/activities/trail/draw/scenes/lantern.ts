// The scene “lantern”: its pictures, drawn for Afterbell.
import { flower, ring, TWINKLE, SPARK, TUFT, BLOSSOM } from '../marks.js';
import type { Scene } from '../scene.js';

export const LANTERN: Scene = {
  story: 'Carry the lantern to the tent.',
  entry: [
    ['thick', 'M2.6 2.6C7.4 1.2 14.6 1.2 21.4 3.2M17 2.1C18.4 1.2 19.4 .9 20.4 .9'],
    ['fine', 'M12 1.8V4.4'],
    ['outline', 'M9 5.8C3.6 7.4 3.6 13.6 9 15.2H15C20.4 13.6 20.4 7.4 15 5.8Z'],
    ['fine', 'M9.6 5.8C7 8.2 7 12.8 9.6 15.2M12 5.8V15.2M14.4 5.8C17 8.2 17 12.8 14.4 15.2'],
    ['ink', 'M9 4.4H15V6H9ZM9.4 15H14.6V16.2H9.4Z'],
    ['fine', 'M12 16.2V18M10.8 16.2L10.4 17.7M13.2 16.2L13.6 17.7'],
    [
      'fine',
      'M1.4 10.5H3.2M20.8 10.5H22.6M2.2 6.8L3.7 7.6M2.2 14.2L3.7 13.4M21.8 6.8L20.3 7.6M21.8 14.2L20.3 13.4',
    ],
  ],
  exit: [
    ['ink', 'M4.4 1.2A3 3 0 1 0 7 5.6A2.5 2.5 0 0 1 4.4 1.2Z'],
    ['ink', 'M19.6 2.4L20 3.5L21.1 3.9L20 4.3L19.6 5.4L19.2 4.3L18.1 3.9L19.2 3.5Z'],
    ['thick', 'M12.6 3.4L11.4 1.4M11.4 3.4L12.6 1.4'],
    ['outline', 'M12 3.4C13.6 8.4 17 13.2 21.6 16.8H2.4C7 13.2 10.4 8.4 12 3.4Z'],
    ['outline', 'M12 7.4C12.6 11 14 14.4 16 16.8H8C10 14.4 11.4 11 12 7.4Z'],
    ['ink', 'M12 7.4C12.2 11 12.4 14.4 12 16.8H8C10 14.4 11.4 11 12 7.4Z'],
    ['fine', 'M18 14.4L17.2 16.6M6 14.4L6.8 16.6M.6 17.6H23.4'],
  ],
  tread: [['ink', 'M-2.4 .3C-2.6 -1.3 2.2 -1.7 2.5 -.1C2.7 1.4 -2.1 1.6 -2.4 .3Z']],
  pace: 9,
  glade: [
    ['outline', 'M-1.8 5.4C-1.2 3.4 -1.2 1.4 -1.4 .4H1.4C1.2 1.4 1.2 3.4 1.8 5.4Z'],
    ['outline', 'M-5.6 .6C-5.2 -5.8 5.2 -5.8 5.6 .6Z'],
    ['ink', `${ring(-2.2, -1.6, 0.8)}${ring(1.2, -2.4, 0.9)}${ring(3, -0.9, 0.5)}`],
  ],
  line: 'vine',
  tip: flower(5, 7.2),
  sky: [TWINKLE, SPARK, TWINKLE],
  ground: [TUFT, BLOSSOM, TUFT],
};
