// What the typeface can print of a text. A name in another script must never stop a print, nor come out as empty boxes.
import type { Coverage } from '../fonts/coverage.js';

export interface PrintableName {
  /** The name as it is printed; null when a letter of it cannot be printed, so that a line to write on is left instead. */
  readonly text: string | null;
  /** Whether anything had to go. */
  readonly isChanged: boolean;
}

const LONGEST_NAME = 40;
/** Every face has these, so long figures of plain characters need no look at each. */
const PLAIN = /^[\n\x20-\x7e]*$/;

/** The printable form of a name: emoji and other signs are dropped, letters are never dropped or replaced. */
export function printableName(name: string, covers: Coverage): PrintableName {
  const clean = tidy(name);
  let text = '';
  for (const char of clean) {
    if (covers(char.codePointAt(0) as number)) text += char;
    else if (/[\p{L}\p{M}\p{N}]/u.test(char)) return { text: null, isChanged: true };
  }
  text = text.replace(/ {2,}/g, ' ').trim();
  const short =
    [...text].length > LONGEST_NAME
      ? `${[...text]
          .slice(0, LONGEST_NAME - 1)
          .join('')
          .trimEnd()}\u2026`
      : text;
  return { text: short === '' ? null : short, isChanged: short !== clean };
}

/** A text in which every character that the face lacks is left out (signs) or shown as a middle dot (letters, digits). */
export function printableText(text: string, covers: Coverage): string {
  if (PLAIN.test(text)) return text;
  let printable = '';
  for (const char of text.normalize('NFC')) {
    const code = char.codePointAt(0) as number;
    if (covers(code) || code === 10) printable += char;
    else if (/[\p{L}\p{N}]/u.test(char)) printable += '\u00b7';
  }
  return printable;
}

function tidy(name: string): string {
  return name
    .normalize('NFC')
    .replace(/[\p{C}]/gu, '')
    .replace(/\s+/gu, ' ')
    .trim();
}
