// Roman numerals in their modern standard form, as clock faces and chapters use them.

const SIGNS = [
  [1000, 'M'],
  [900, 'CM'],
  [500, 'D'],
  [400, 'CD'],
  [100, 'C'],
  [90, 'XC'],
  [50, 'L'],
  [40, 'XL'],
  [10, 'X'],
  [9, 'IX'],
  [5, 'V'],
  [4, 'IV'],
  [1, 'I'],
] as const;

/** "XLVII" for 47: a whole number from 1 to 3999. Throws RangeError beyond. */
export function toRoman(value: number): string {
  if (!Number.isInteger(value) || value < 1 || value > 3999)
    throw new RangeError(`${value} has no Roman numeral`);
  let rest = value;
  let out = '';
  for (const [size, sign] of SIGNS) {
    out += sign.repeat(Math.floor(rest / size));
    rest %= size;
  }
  return out;
}

/** The number that a Roman numeral in standard form names, in either case; null for anything else ("IIII" too). */
export function parseRoman(text: string): number | null {
  const letters = text.trim().toUpperCase();
  if (!/^[MDCLXVI]{1,15}$/.test(letters)) return null;
  let rest = letters;
  let sum = 0;
  for (const [size, sign] of SIGNS) {
    while (rest.startsWith(sign)) {
      sum += size;
      rest = rest.slice(sign.length);
    }
  }
  return sum >= 1 && sum <= 3999 && rest === '' && toRoman(sum) === letters ? sum : null;
}
