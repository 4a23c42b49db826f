// The standard of the school's own country, for the rooms where skills are looked through. It comes from here rather than
// with the page: the texts of three standards would be a tenth of what the browser loads.
import type { Result } from '#api/problem.js';
import type { StandardView } from '#api/standard.js';
import { coverageOf } from '#engine/curriculum/coverage.js';
import { homeStandard, standardOf } from '#engine/curriculum/standards.js';
import type { Services } from '../services.js';
import { readSettings } from './settings.js';

/** Every statement of the home standard with the skills that exercise it. */
export async function homeStandardView(services: Services): Promise<Result<StandardView>> {
  const settings = await readSettings(services);
  if (!settings.ok) return settings;
  const id = homeStandard(settings.value.locale);
  return {
    ok: true,
    value: {
      id,
      name: standardOf(id).name,
      rows: coverageOf(id).map((row) => ({ ...row, skills: [...row.skills] })),
    },
  };
}
