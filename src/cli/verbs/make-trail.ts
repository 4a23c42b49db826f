// afterbell make trail
import { PITCHES } from '#engine/activities/supply.js';
import { composeTrail, type TrailRequest } from '#engine/activities/trail/compose.js';
import { THEMES, TRAIL_SIZE, type Trail } from '#engine/activities/trail/trail.js';
import { type MadeOptions, printMade } from '../made.js';
import { readLocale, readNames, readWhole, readWord, readYears } from '../options.js';
import { readOwnSource } from '../own-list.js';
import { printText } from '../output.js';

interface Options extends MadeOptions {
  readonly years: string;
  readonly skills?: string;
  readonly own?: string;
  readonly number?: string;
  readonly rows: string;
  readonly columns: string;
  readonly pitch: string;
  readonly theme?: string;
  readonly locale: string;
}

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
  printMade(options, {
    stream: 'trails',
    most: 10_000,
    compose: (seed) => composeTrail({ ...base, seed }),
    show: printTrail,
  });
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
