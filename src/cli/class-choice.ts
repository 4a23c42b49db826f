// Which class a verb means.
import type { ClassSummary } from '#api/class.js';
import { listClasses } from '#server/app/desk/classes.js';
import type { Services } from '#server/app/services.js';
import { UsageFailure, valueOf } from './failure.js';

/** The class with this id or name; without one, the only class there is. */
export async function chooseClass(services: Services, wanted: string | undefined): Promise<ClassSummary> {
  const classes = valueOf(await listClasses(services));
  if (classes.length === 0)
    throw new UsageFailure('There is no class yet. Make one with "afterbell class import".');
  const names = classes.map(({ name }) => `“${name}”`).join(', ');
  if (wanted === undefined) {
    const [only, ...others] = classes;
    if (only && others.length === 0) return only;
    throw new UsageFailure(`There are several classes: ${names}. Say which with --class.`);
  }
  const found = classes.filter(
    ({ id, name }) => id === wanted || name.toLowerCase() === wanted.toLowerCase(),
  );
  if (found.length === 1) return found[0] as ClassSummary;
  if (found.length > 1)
    throw new UsageFailure(
      `Several classes are called “${wanted}”. Name one by its id: ${found.map(({ id }) => id).join(', ')}.`,
    );
  throw new UsageFailure(`There is no class “${wanted}”. The classes are ${names}.`);
}
