// Names pasted one to a line, as they come out of a letter, a spreadsheet column or a message.
import type { RosterReading } from '#api/class.js';
import { RosterReader } from './reading.js';
import { parseYear } from './year-words.js';

/** "Tamsin Okoro" or "Okoro, Tamsin" split into given and family name; the last word is the family name. */
export function splitName(text: string): { given: string; family: string } {
  const comma = /^([^,]+),\s*(.+)$/.exec(text);
  if (comma) return { given: comma[2] as string, family: comma[1] as string };
  const words = text.trim().split(/\s+/);
  if (words.length === 1) return { given: text.trim(), family: '' };
  return { given: words.slice(0, -1).join(' '), family: words.at(-1) as string };
}

// "1. ", "12) ", "- ", "• " before a name.
const LIST_MARK = /^(?:\d{1,2}[.)]\s*|[-•*–]\s+)/u;
// A year after the name: "(Year 4)", ", 4", " Y4", a tab and a number.
const TRAILING_YEAR =
  /^(.*?)[\s,;(\t]+((?:(?:year|yr|y|grade|gr)[\s.]*)?0?[0-6]|foundation|prep|kindergarten|reception)\)?\s*$/iu;

const cell = (text: string) => ({ text, column: 'name' });

/** Reads pasted names. A line may name a year at its end; the others get `defaultYear`. */
export function readNames(text: string, defaultYear: number): RosterReading {
  const reader = new RosterReader();
  for (const [index, line] of text.split(/\r\n|\r|\n/).entries()) {
    const entry = line.replace(LIST_MARK, '').trim();
    if (entry === '') continue;
    const dated = TRAILING_YEAR.exec(entry);
    const year = dated ? parseYear(dated[2] as string) : null;
    const name = dated && year !== null ? (dated[1] as string).replace(/[,;\s]+$/, '') : entry;
    const { given, family } = splitName(name.replace(/\t+/g, ' '));
    reader.child(index + 1, cell(given), cell(family), cell(''), year ?? defaultYear);
  }
  return reader.finish('names');
}
