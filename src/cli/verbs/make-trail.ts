// afterbell make trail
import { PITCHES } from '#engine/activities/supply.js';
import { composeTrail, type TrailRequest } from '#engine/activities/trail/compose.js';
import { THEMES, TRAIL_SIZE, type Trail } from '#engine/activities/trail/trail.js';
import { Rng } from '#engine/random/rng.js';
import { valueOf } from '../failure.js';
import { readLocale, readNames, readWhole, readWord, readYears } from '../options.js';
import { readOwnSource } from '../own-list.js';
import { printJson, printText } from '../output.js';

interface Options {
  readonly years: string;
  readonly skills?: string;
  readonly own?: string;
  readonly number?: string;
  readonly rows: string;
  readonly columns: string;
  readonly pitch: string;
  readonly theme?: string;
  readonly count?: string;
  readonly seed: string;
  readonly locale: string;
  readonly json?: boolean;
}

const LARGEST_SEED = 2_147_483_647;

export function makeTrail(options: Options): void {
  const locale = readLocale(options.locale);
  const base: Omit<TrailRequest, 'seed'> = {
    years: readYears('--years', options.years),
    locale: locale.id,
    rows: readWhole('--rows', options.rows, TRAIL_SIZE.least, TRAIL_SIZE.most),
    columns: readWhole('--columns', options.columns, TRAIL_SIZE.least, TRAIL_SIZE.most),
    pitch: readWord('--pitch', options.pitch, PITCHES),
    ...(options.skills === undefined ? {} : { skills: readNames('--skills', options.skills) }),
    ...readOwnSource(options, locale),
    ...(options.theme === undefined ? {} : { theme: readWord('--theme', options.theme, THEMES) }),
  };
  const seed = readWhole('--seed', options.seed, 0, LARGEST_SEED);
  if (options.count === undefined) {
    const trail = valueOf(composeTrail({ ...base, seed }));
    if (options.json) printJson(trail);
    else printTrail(trail);
    return;
  }
  const count = readWhole('--count', options.count, 1, 10_000);
  const rng = new Rng(seed).fork('trails');
  const items = Array.from({ length: count }, () =>
    valueOf(composeTrail({ ...base, seed: rng.int(0, LARGEST_SEED) })),
  );
  if (options.json) printJson({ items });
  else for (const trail of items) printTrail(trail);
}

function printTrail({ rows, columns, seed, theme, cells, tiles, proof }: Trail): void {
  const width = Math.max(...tiles.map(({ answer }) => answer.text.length));
  const place = (cell: number) =>
    `${String.fromCharCode(65 + Math.floor(cell / columns))}${(cell % columns) + 1}`;
  printText(
    [
      `A trail of ${rows} x ${columns} tiles (${theme}, seed ${seed}): they fit in one way only, and each of the ${proof.swaps} swaps of two tiles breaks the picture in ${proof.leastBreaks} places or more.`,
      ...cells.map(
        ({ question }, cell) =>
          `  ${place(cell)}  ${question.answer.text.padStart(width)}  |  ${question.text}`,
      ),
      '',
    ].join('\n'),
  );
}
