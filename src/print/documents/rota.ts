// The rota for the wall: who has which set today, and which come after it. Nothing on it tells how anyone did.
import type { RotaCell, RotaSheet } from '../request.js';
import type { Composer } from './composer.js';
import { dateInWords, type PartData, paperData } from './page-data.js';

/** Rows to a page; more children go on to another. */
const ROWS_A_PAGE = 34;

/** The pages of the request's rota. */
export function* rotaParts({ request, names }: Composer): Generator<PartData> {
  const { options, rota } = request;
  if (!rota) return;
  const date = dateInWords(options);
  for (let from = 0; from < rota.rows.length; from += ROWS_A_PAGE)
    yield {
      kind: 'rota',
      pages: 1,
      paper: paperData(request.paper),
      foot: [options.className, rota.title, date].filter(Boolean).join('  \u00b7  '),
      size: options.largePrint ? 15 : 12.5,
      heading: rota.title,
      lead: [options.className, date].filter(Boolean).join(', '),
      how: 'Finished? Check it with an adult, tick the square, put the set back in its bag and its box, and take the next one in your row. If somebody still has it, take the one after.',
      columns: [
        'Name',
        'Now',
        ...Array.from({ length: nextColumns(rota) }, (_, i) => (i === 0 ? 'Next' : 'Then')),
      ],
      rows: rota.rows.slice(from, from + ROWS_A_PAGE).map(({ name, isAway, cells }) => ({
        name: names.one(name) ?? '',
        away: isAway ? 'away' : '',
        cells: cells.map(cellData),
      })),
    };
}

function nextColumns({ rows }: RotaSheet): number {
  return Math.max(0, ...rows.map(({ cells }) => cells.length - 1));
}

function cellData(cell: RotaCell | null): object | null {
  return cell && { band: cell.band, number: String(cell.number), box: `box ${cell.box}` };
}
