// What to copy for tomorrow: which level, how many sheets, and a few spare ones.
import { dateInWords, type PartData, paperData } from '../page-data.js';
import type { TimedComposer } from './compose-timed.js';

/** A spare sheet for every so many children on a level, at least one. Common practice. */
const CHILDREN_A_SPARE = 5;

/** One page: a row for each level and form that is handed out. */
export function* spareParts({ request }: TimedComposer): Generator<PartData> {
  const { levels, sheets = [], options } = request;
  const rows = levels.flatMap((level, at) =>
    level.forms.flatMap(({ form }, number) => {
      const count = sheets.filter((sheet) => sheet.level === at && sheet.form === number).length;
      if (count === 0) return [];
      return [
        {
          place: level.level === null ? '' : String(level.level),
          title: level.title,
          form,
          count,
          spare: Math.ceil(count / CHILDREN_A_SPARE),
        },
      ];
    }),
  );
  yield {
    kind: 'timed-spares',
    pages: 1,
    paper: paperData(request.paper),
    heading: 'Copies for timed practice',
    lead: [options.className, dateInWords(options)].filter(Boolean).join(', '),
    rows,
    total: rows.reduce((sum, { count, spare }) => sum + count + spare, 0),
    foot: [options.className, dateInWords(options)].filter(Boolean).join('  ·  '),
  };
}
