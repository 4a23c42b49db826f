// How wide a text in the figures' face sets, so that labels can be placed without a font engine.

/** Advance widths of Andika Regular in hundredths of the letter size, for the characters from space to tilde (read from the font's hmtx table). */
const ADVANCES = [
  27, 37, 50, 59, 59, 75, 60, 30, 39, 39, 50, 59, 32, 42, 31, 49, 59, 59, 59, 59, 59, 59, 59, 59, 59, 59, 31,
  32, 59, 59, 59, 51, 83, 68, 63, 66, 70, 57, 56, 69, 72, 48, 47, 64, 53, 88, 73, 71, 58, 72, 64, 57, 62, 70,
  67, 102, 65, 64, 60, 39, 49, 39, 42, 62, 28, 56, 56, 50, 58, 53, 37, 55, 57, 28, 29, 51, 28, 82, 58, 56, 57,
  55, 43, 47, 41, 58, 52, 76, 53, 52, 51, 49, 34, 49, 54,
];
const OTHERS: Readonly<Record<string, number>> = { '\u00a0': 27, '°': 32 };
/** Signs and currency marks, which set as wide as a digit. */
const DIGIT_WIDE = '\u2212×÷£¢€';

/** Width of the text in letter sizes (ems). Characters outside the table count as 1 em, which is on the wide side. */
export function textWidth(words: string): number {
  let hundredths = 0;
  for (const character of words) {
    const code = character.codePointAt(0) ?? 0;
    hundredths += ADVANCES[code - 32] ?? OTHERS[character] ?? (DIGIT_WIDE.includes(character) ? 59 : 100);
  }
  return hundredths / 100;
}
