// Chosen files -> roster input. Which of several files is which follows from their names or, failing that, their headings.
import type { RosterInput } from '#api/class.js';

type Files = { ok: true; input: Omit<RosterInput, 'defaultYear'> } | { ok: false; message: string };

/** No class list comes near this; a larger file is something else. */
const MOST_BYTES = 1_000_000;

/** Reads one roster file, or OneRoster's users, classes and enrollments together. */
export async function readRosterFiles(files: readonly File[]): Promise<Files> {
  const large = files.find((file) => file.size > MOST_BYTES);
  if (large)
    return {
      ok: false,
      message: `${large.name} is far larger than a class list. Choose the list of one class.`,
    };
  const texts = await Promise.all(
    files.map(async (file) => ({ name: file.name.toLowerCase(), text: decode(await file.arrayBuffer()) })),
  );
  const unreadable = texts.find(({ text }) => text === null);
  if (unreadable)
    return {
      ok: false,
      message: `${unreadable.name} is not plain text. Save the list as “CSV UTF-8” and choose it again.`,
    };
  const known = texts.map(({ name, text }) => ({ name, text: text ?? '' }));
  const find = (word: string, heading: RegExp) =>
    known.find(({ name }) => name.includes(word))?.text ??
    known.find(({ text }) => heading.test(text.split('\n')[0] ?? ''))?.text;
  const users = find('user', /givenName/i);
  const classesCsv = find('class', /\btitle\b.*classType/i);
  const enrollmentsCsv = find('enroll', /classSourcedId.*userSourcedId/i);
  if (files.length === 1 || users === undefined) {
    const [only] = known;
    if (only && files.length === 1) return { ok: true, input: { text: only.text } };
    return { ok: false, message: 'None of these files holds the children. Choose users.csv as well.' };
  }
  return {
    ok: true,
    input: {
      text: users,
      ...(classesCsv ? { classesCsv } : {}),
      ...(enrollmentsCsv ? { enrollmentsCsv } : {}),
    },
  };
}

/** UTF-8, or UTF-16 with its mark as spreadsheets write it; Windows-1252 when neither fits. Null for what is not text. */
function decode(bytes: ArrayBuffer): string | null {
  const [first, second] = new Uint8Array(bytes);
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  if (new Uint8Array(bytes).includes(0)) return null;
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
