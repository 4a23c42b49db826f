// Small marks that several scenes share: what grows, floats and glitters around a trail. Around 0, 0.
import type { Sketched } from './scene.js';

/** A circle as an outline. */
export function ring(x: number, y: number, r: number): string {
  return `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
}

/** A star with so many rays, as an outline. */
export function star(rays: number, outer: number, inner: number, x = 0, y = 0): string {
  const points = Array.from({ length: 2 * rays }, (_, i) => {
    const angle = (Math.PI * i) / rays - Math.PI / 2;
    const r = i % 2 === 0 ? outer : inner;
    return `${(x + r * Math.cos(angle)).toFixed(2)} ${(y + r * Math.sin(angle)).toFixed(2)}`;
  });
  return `M${points.join('L')}Z`;
}

/** A flower with round petals. */
export function flower(petals: number, reach: number): Sketched {
  const r = reach * 0.36;
  const around = Array.from({ length: petals }, (_, i) => {
    const angle = (2 * Math.PI * i) / petals - Math.PI / 2;
    return ring(
      Number(((reach - r) * Math.cos(angle)).toFixed(2)),
      Number(((reach - r) * Math.sin(angle)).toFixed(2)),
      r,
    );
  });
  return [...around.map((d) => ['outline', d] as const), ['ink', ring(0, 0, reach * 0.26)]];
}

export const CLOUD: Sketched = [
  [
    'fine',
    'M-3.2 1.2C-3.9 .2 -3 -.8 -2.2 -.5C-2 -1.9 .1 -2.2 .6 -1C1.7 -1.7 2.9 -.7 2.4 .3C3.4 .4 3.4 1.2 2.8 1.2Z',
  ],
];
export const TUFT: Sketched = [
  [
    'fine',
    'M-2.2 1.4C-2 .2 -2.2 -.6 -2.8 -1.2M-.8 1.4C-.6 -.2 -.2 -1.2 .2 -2M.6 1.4C.8 .4 1.4 -.4 2.2 -.8M-3 1.6H2.6',
  ],
];
export const WAVE: Sketched = [
  ['fine', 'M-3.4 .2C-2.6 -1 -1.6 -1 -.9 .1C-.2 1.1 .8 1.1 1.5 .1C2.1 -.8 2.9 -.9 3.4 -.1'],
];
export const TWINKLE: Sketched = [['fine', 'M0 -1.8V1.8M-1.8 0H1.8M-.8 -.8L.8 .8M.8 -.8L-.8 .8']];
export const SPARK: Sketched = [
  ['ink', 'M0 -2C.2 -.5 .5 -.2 2 0C.5 .2 .2 .5 0 2C-.2 .5 -.5 .2 -2 0C-.5 -.2 -.2 -.5 0 -2Z'],
];
export const BUBBLES: Sketched = [
  ['fine', ring(-1, 0.8, 1.3)],
  ['fine', ring(1.2, -0.9, 0.8)],
  ['fine', ring(1.4, 1.5, 0.5)],
];
export const WEED: Sketched = [
  [
    'fine',
    'M0 2.6C-1.4 1.2 1.2 .2 -.2 -1.2C-.8 -1.8 -.4 -2.4 0 -2.8M-.2 1.8C1 1.6 1.8 .8 1.6 -.2M.1 .4C-1 .2 -1.6 -.6 -1.4 -1.4',
  ],
];
export const PEBBLES: Sketched = [['fine', 'M-2.4 1.2C-2.6 .2 -.8 -.2 -.4 1.2ZM.6 1.2C.6 -.6 3 -.6 3 1.2Z']];
export const GULL: Sketched = [['fine', 'M-2.6 -.4C-1.8 -1.4 -.6 -1.2 0 .2C.6 -1.2 1.8 -1.4 2.6 -.4']];
export const LEAF: Sketched = [['fine', 'M-2.4 1.4C-2 -1.4 .4 -2 2.6 -1.6C2.4 .8 .2 2 -2.4 1.4L1 -.6']];
export const BLOSSOM: Sketched = [
  ['fine', 'M0 2.6V.2M0 1.8C.8 1.8 1.4 1.2 1.4 .6'],
  [
    'fine',
    `${ring(0, -1, 0.5)}${ring(0, -2.1, 0.6)}${ring(1, -1.3, 0.6)}${ring(-1, -1.3, 0.6)}${ring(0.6, -0.1, 0.6)}${ring(-0.6, -0.1, 0.6)}`,
  ],
];
