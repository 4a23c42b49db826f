import { describe, expect, it } from 'vitest';
import { CAPITAL_SHARE, fontSizePx, LEAST_MINUTES, USUAL_ROOM } from './legibility.js';

describe('fontSizePx', () => {
  it('agrees with the formula of NUREG-0700, height = 6.283 x distance x minutes / 21600', () => {
    const pixelMm = (65 * 25.4 * 0.87157) / 1920;
    const capitalMm = (6.283 * 8000 * LEAST_MINUTES) / 21_600;
    expect(fontSizePx(LEAST_MINUTES, USUAL_ROOM, 1920) * CAPITAL_SHARE * pixelMm).toBeCloseTo(capitalMm, 1);
  });
  it('asks for letters twice as large at twice the distance', () => {
    const near = fontSizePx(16, { diagonalInches: 65, distanceM: 4 }, 1920);
    expect(fontSizePx(16, USUAL_ROOM, 1920) / near).toBeCloseTo(2, 3);
  });
});
