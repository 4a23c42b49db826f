// Plain question text -> the pieces a page sets: words, stacked fractions and answer gaps, with the spaces that may not break.

/** A run of words, a stacked fraction (with its whole part, if any), or a gap to write in. */
export type TextPiece =
  | { readonly t: string }
  | { readonly whole: string; readonly n: string; readonly d: string }
  | { readonly gap: true };

const NBSP = '\u00a0';
const FRACTION = /(?<![\d./,\p{L}])(?:(\d{1,3})[ \u00a0])?(\d{1,4}|\?)\/(\d{1,4}|\?)(?![\d/]|\.\d)/gu;
const GAP = /_{2,}|[\u25a1\u25a2\u2610]/gu;
/** A space between a number and its unit. */
const UNIT = /(?<=\d) (?=(?:mm|cm|m|km|g|kg|mL|ml|L|l|h|min|s|am|pm|tens|ones)\b)/gu;
/** Longest sum, in characters, that is always kept on one line. */
const LONGEST_GLUED = 22;

/** The pieces of one line of question text. Joined back with "whole n/d" they give the text again. */
export function textPieces(text: string): readonly TextPiece[] {
  const glued = glue(text);
  const pieces: TextPiece[] = [];
  let from = 0;
  for (const match of glued.matchAll(FRACTION)) {
    pushWords(pieces, glued.slice(from, match.index));
    pieces.push({ whole: match[1] ?? '', n: match[2] as string, d: match[3] as string });
    from = match.index + match[0].length;
  }
  pushWords(pieces, glued.slice(from));
  return pieces;
}

function pushWords(pieces: TextPiece[], words: string): void {
  let from = 0;
  for (const match of words.matchAll(GAP)) {
    if (match.index > from) pieces.push({ t: words.slice(from, match.index) });
    pieces.push({ gap: true });
    from = match.index + match[0].length;
  }
  if (from < words.length) pieces.push({ t: words.slice(from) });
}

/** Keeps short sums whole, lets long ones break after an operator only, and keeps the last two words of a sentence together. */
function glue(text: string): string {
  const measures = text.replace(/(?<=\d) (?=\d{3}(?!\d))/gu, NBSP).replace(UNIT, NBSP);
  const sums = measures.replace(/[^ ]+(?: [+\u2212\u00d7\u00f7=<>] [^ ]+)+/gu, (sum) =>
    sum.length <= LONGEST_GLUED
      ? sum.replaceAll(' ', NBSP)
      : sum.replace(/ (?=[+\u2212\u00d7\u00f7=<>] )/gu, NBSP),
  );
  return keepLastWords(sums);
}

/** The same text with its last two words kept on one line, when the last is short. */
export function keepLastWords(text: string): string {
  const lastSpace = text.lastIndexOf(' ');
  const endsShort = text.length > 24 && text.length - lastSpace <= 10;
  return endsShort ? text.slice(0, lastSpace) + NBSP + text.slice(lastSpace + 1) : text;
}
