// What is set once for the school: one document, with a version that guards against two editors.
import { and, eq } from 'drizzle-orm';
import { LOCALES } from '#engine/numbers/locale.js';
import { requireSpan } from '../checks.js';
import { Refusal } from '../columns.js';
import { DEFAULT_SETTINGS, HOME_PAPERS, type Settings } from '../records.js';
import { refuse, succeed } from '../result.js';
import { settings } from '../schema.js';
import type { Session } from '../session.js';
import type { SettingsStore } from '../store.js';

function requireSettings(value: Settings): void {
  if (!LOCALES.includes(value.locale) || !HOME_PAPERS.includes(value.paper)) {
    throw new Refusal(
      'input.invalid',
      'The language or the paper is not one that Afterbell knows.',
      'Choose from the list.',
    );
  }
  for (const span of [...value.terms, ...value.closedDays]) requireSpan(span);
  const terms = [...value.terms].sort((a, b) => (a.first < b.first ? -1 : 1));
  for (const [i, term] of terms.entries()) {
    const next = terms[i + 1];
    if (next && next.first <= term.last) {
      throw new Refusal(
        'date.invalid',
        `“${term.name}” and “${next.name}” overlap.`,
        'Let each term begin after the one before has ended.',
      );
    }
  }
}

/** The settings of the session's school. */
export function settingsStore(session: Session): SettingsStore {
  const mine = eq(settings.schoolId, session.school);
  return {
    read: () =>
      session.read(async (tx) => {
        const [row] = await tx.select().from(settings).where(mine);
        // Settings added since the document was written take their defaults.
        return succeed({ version: row?.version ?? 0, value: { ...DEFAULT_SETTINGS, ...row?.value } });
      }),
    write: (value, version) =>
      session.write(async (tx) => {
        requireSettings(value);
        const next = { version: version + 1, value };
        const written =
          version === 0
            ? await tx
                .insert(settings)
                .values({ schoolId: session.school, ...next })
                .onConflictDoNothing()
                .returning({ version: settings.version })
            : await tx
                .update(settings)
                .set(next)
                .where(sameVersion(version))
                .returning({ version: settings.version });
        if (written.length === 0) {
          return refuse(
            'conflict',
            'The settings were changed in another window meanwhile.',
            'Look at them again, then make your change.',
          );
        }
        return succeed(next);
      }),
  };

  function sameVersion(version: number) {
    return and(mine, eq(settings.version, version));
  }
}
