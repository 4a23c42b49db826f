// What a name may be: any script, any emoji, but nothing that a database, a slip or a spreadsheet would choke on.

const LONGEST_NAME = 80;
// Control characters and the invisible marks that reorder or hide text. Joiners stay: names and emoji need them.
// oxlint-disable-next-line no-control-regex -- refusing control characters is the point
const FORBIDDEN = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u2028-\u202e\u2066-\u2069\ufeff]/u;

/** The name tidied: outer spaces gone, inner spaces single, composed Unicode (NFC). */
export function tidyName(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\s\u00a0]+/g, ' ')
    .trim();
}

/** Why a tidied name cannot be kept, as message and hint; null when it can. */
export function faultOfName(name: string): { message: string; hint: string } | null {
  if (name === '')
    return { message: 'There is no name here.', hint: 'Type the child’s name or delete the row.' };
  if (name.includes('\ufffd')) {
    return {
      message: 'Some letters of this name were lost on the way.',
      hint: 'Save the file as “CSV UTF-8” and import it again, or type the name.',
    };
  }
  if (FORBIDDEN.test(name)) {
    return { message: 'This name has invisible control characters in it.', hint: 'Type the name by hand.' };
  }
  if (name.length > LONGEST_NAME) {
    return {
      message: `This name is longer than ${LONGEST_NAME} letters.`,
      hint: 'Check that each child has a row of its own, or shorten the name.',
    };
  }
  if (!/[\p{L}\p{N}\p{Extended_Pictographic}]/u.test(name)) {
    return { message: `“${name}” has no letter in it.`, hint: 'Type the child’s name.' };
  }
  return null;
}
