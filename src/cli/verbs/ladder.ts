// afterbell ladder
import { LADDER } from '#engine/activities/timed/ladder.js';
import { printJson, printText } from '../output.js';

export function ladder({ json }: { readonly json?: boolean }): void {
  const levels = LADDER.map(({ id, title, year }, i) => ({ level: i + 1, id, title, year }));
  if (json) printJson(levels);
  else
    printText(
      levels
        .map(
          ({ level, title, year }) =>
            `${String(level).padStart(3)}  ${title} (Year ${year === 0 ? 'F' : year})\n`,
        )
        .join(''),
    );
}
