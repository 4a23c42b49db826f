// The three published standards that skills are mapped to, and the way to a statement by its code.
import type { LocaleId } from '../numbers/locale.js';
import { AC9 } from './ac9.js';
import { CCSS } from './ccss.js';
import { ENGLAND } from './england.js';
import type { Standard, StandardId, Statement } from './statement.js';

export const STANDARDS: readonly Standard[] = [AC9, ENGLAND, CCSS];

const BY_CODE: ReadonlyMap<StandardId, ReadonlyMap<string, Statement>> = new Map(
  STANDARDS.map(({ id, statements }) => [id, new Map(statements.map((one) => [one.code, one] as const))]),
);

/** New Zealand's own statements are not here yet; the Australian ones are the nearest neighbour's. */
const HOME: Readonly<Record<LocaleId, StandardId>> = {
  'en-AU': 'ac9',
  'en-NZ': 'ac9',
  'en-GB': 'england',
  'en-US': 'ccss',
};

/** The standard with the given id. */
export function standardOf(id: StandardId): Standard {
  const standard = STANDARDS.find((one) => one.id === id);
  if (!standard) throw new RangeError(`there is no standard ${id}`);
  return standard;
}

/** The standard that schools of a locale follow unless they say otherwise. */
export function homeStandard(locale: LocaleId): StandardId {
  return HOME[locale];
}

/** The statement with the given code, or null when that standard has none here. */
export function statementOf(standard: StandardId, code: string): Statement | null {
  return BY_CODE.get(standard)?.get(code) ?? null;
}
