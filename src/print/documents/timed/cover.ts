// The child's own record: one sheet folded in half, so that counts and the graph lie inside, for the child alone.
import { type PartData, paperData } from '../page-data.js';
import type { TimedComposer } from './compose-timed.js';

/** School days that one cover holds: four weeks. */
const DAYS = 20;

/** Two pages a cover: outside, then inside. */
export function* coverParts({ request, names }: TimedComposer): Generator<PartData> {
  const { options, levels, sheets } = request;
  const most = Math.max(...levels.flatMap(({ forms }) => forms.map(({ questions }) => questions.length)));
  const named = options.names ?? sheets?.flatMap(({ name }) => name ?? []);
  const owners = named && named.length > 0 ? named.map((name) => names.one(name)) : [null];
  for (const name of owners) {
    yield {
      kind: 'timed-cover',
      pages: 2 * (options.copies ?? 1),
      copies: options.copies ?? 1,
      paper: paperData(request.paper),
      name,
      className: options.className ?? '',
      days: DAYS,
      // Ruled to the next ten above a full sheet.
      most: Math.ceil(most / 10) * 10,
    };
  }
}
