// Column addition as children do it wrongly: what happens to the carry, and to numbers of unequal length.

/** The lowest place in which either number has a digit other than 0: 100 for 1500 and 300. 1 when both are 0. */
export function smallestPlace(a: number, b: number): number {
  let place = 1;
  while ((a > 0 || b > 0) && a % (place * 10) === 0 && b % (place * 10) === 0) place *= 10;
  return place;
}

/** Number of carries in a + b, column by column from the right. */
export function carriesOf(a: number, b: number): number {
  let carries = 0;
  let carry = 0;
  for (let x = a, y = b; x > 0 || y > 0; x = Math.floor(x / 10), y = Math.floor(y / 10)) {
    carry = (x % 10) + (y % 10) + carry > 9 ? 1 : 0;
    carries += carry;
  }
  return carries;
}

/**
 * "58 + ? = 66" found place by place without the ten that the ones fill: 8 and 8 make 16, 5 and 1 make 6, so 18.
 * Null where the ones fill no ten.
 */
export function complementWithExtraTen(a: number, b: number): number | null {
  return (a % 10) + (b % 10) > 9 ? b + 10 : null;
}

/** a + b with every carry forgotten: 47 + 38 = 75. */
export function addDroppingCarries(a: number, b: number): number {
  let total = 0;
  let place = 1;
  for (let x = a, y = b; x > 0 || y > 0; x = Math.floor(x / 10), y = Math.floor(y / 10)) {
    total += (((x % 10) + (y % 10)) % 10) * place;
    place *= 10;
  }
  // The leftmost column has nothing to carry into: children write it out in full.
  const columns = Math.max(String(a).length, String(b).length);
  const top = Math.floor(a / 10 ** (columns - 1)) + Math.floor(b / 10 ** (columns - 1));
  return top > 9 ? total + 10 ** columns : total;
}

/** a + b with every column's sum written out whole: 47 + 38 = 715. */
export function addWritingCarries(a: number, b: number): number {
  let text = '';
  let x = a;
  let y = b;
  do {
    text = String((x % 10) + (y % 10)) + text;
    x = Math.floor(x / 10);
    y = Math.floor(y / 10);
  } while (x > 0 || y > 0);
  return Number(text);
}

/** a + b with the shorter number pushed to the left edge: 47 + 6 = 107. Equals a + b for equal lengths. */
export function addLeftAligned(a: number, b: number): number {
  const gap = String(a).length - String(b).length;
  return gap >= 0 ? a + b * 10 ** gap : a * 10 ** -gap + b;
}
