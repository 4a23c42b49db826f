// Rules by which children wrongly choose the larger of two decimals.
// Names and definitions: Sackur-Grisvard & Leonard 1985; Stacey & Steinle (longer and shorter is larger).

export const DECIMAL_RULES = ['whole-number', 'longer-larger', 'shorter-larger', 'zero'] as const;
export type DecimalRule = (typeof DECIMAL_RULES)[number];

function parts(text: string): { whole: number; after: string } {
  const [whole = '0', after = ''] = text.split('.');
  return { whole: Number(whole), after };
}

/** The decimal that a child with this rule calls larger, of two written without grouping; null when the rule does not decide. */
export function largerByRule(rule: DecimalRule, a: string, b: string): string | null {
  const [x, y] = [parts(a), parts(b)];
  if (x.whole !== y.whole) return x.whole > y.whole ? a : b;
  const byDigits = Number(x.after) - Number(y.after);
  const byLength = x.after.length - y.after.length;
  const zeros = Number(y.after.startsWith('0')) - Number(x.after.startsWith('0'));
  const order =
    rule === 'whole-number'
      ? byDigits
      : rule === 'longer-larger'
        ? byLength || byDigits
        : rule === 'shorter-larger'
          ? -byLength || byDigits
          : zeros || byDigits;
  return order === 0 ? null : order > 0 ? a : b;
}
