// The wrong rules for comparing decimals, against their predictions on nine pairs.
// Rules: Sackur-Grisvard & Leonard 1985; Stacey & Steinle. Pairs 4.8/4.63, 2.65/2.6498, 3.8/3.214, 3.8/3.09 and
// 2.36/5.1 appear in published texts; the predictions follow from the rules' definitions.
import { describe, expect, it } from 'vitest';
import { DECIMAL_RULES, largerByRule } from './decimal-comparison.js';

const PREDICTIONS = [
  { pair: ['4.8', '4.63'], whole: '4.63', longer: '4.63', shorter: '4.8', zero: '4.63' },
  { pair: ['2.65', '2.6498'], whole: '2.6498', longer: '2.6498', shorter: '2.65', zero: '2.6498' },
  { pair: ['3.8', '3.214'], whole: '3.214', longer: '3.214', shorter: '3.8', zero: '3.214' },
  { pair: ['3.8', '3.09'], whole: '3.09', longer: '3.09', shorter: '3.8', zero: '3.8' },
  { pair: ['0.3', '0.04'], whole: '0.04', longer: '0.04', shorter: '0.3', zero: '0.3' },
  { pair: ['5.736', '5.62'], whole: '5.736', longer: '5.736', shorter: '5.62', zero: '5.736' },
  { pair: ['0.75', '0.8'], whole: '0.75', longer: '0.75', shorter: '0.8', zero: '0.75' },
  { pair: ['2.36', '5.1'], whole: '5.1', longer: '5.1', shorter: '5.1', zero: '5.1' },
  { pair: ['0.6', '0.60'], whole: '0.60', longer: '0.60', shorter: '0.6', zero: '0.60' },
] as const;

describe('rules for the larger decimal', () => {
  it.each(PREDICTIONS)('predicts $pair', ({ pair: [a, b], whole, longer, shorter, zero }) => {
    const said = Object.fromEntries(DECIMAL_RULES.map((rule) => [rule, largerByRule(rule, a, b)]));
    expect(said).toEqual({
      'whole-number': whole,
      'longer-larger': longer,
      'shorter-larger': shorter,
      zero,
    });
    for (const rule of DECIMAL_RULES) expect(largerByRule(rule, b, a)).toBe(said[rule]);
  });

  it('does not decide between equal texts', () => {
    for (const rule of DECIMAL_RULES) expect(largerByRule(rule, '3.6', '3.6')).toBeNull();
  });

  it('lets the zero rule mislead only where the whole-number rule does', () => {
    for (let a = 1; a < 1000; a += 7) {
      for (const b of ['5', '05', '50', '45', '405', '009']) {
        const [x, y] = [`1.${String(a).padStart(3, '0').replace(/0+$/, '') || '0'}`, `1.${b}`];
        const larger = Number(x) > Number(y) ? x : y;
        const zero = largerByRule('zero', x, y);
        if (Number(x) !== Number(y) && zero !== null && zero !== larger)
          expect(largerByRule('whole-number', x, y)).toBe(zero);
      }
    }
  });
});
