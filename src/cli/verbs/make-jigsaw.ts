// afterbell make jigsaw
import { composeJigsaw } from '#engine/activities/jigsaw/compose.js';
import type { JigsawRequest } from '#engine/activities/jigsaw/request.js';
import { explainJigsaw } from '#engine/activities/jigsaw/explain.js';
import {
  type Jigsaw,
  JIGSAW_LEVELS,
  LEAST_COLUMNS,
  LEAST_ROWS,
  MOST_COLUMNS,
  MOST_ROWS,
  ROW_KINDS,
} from '#engine/activities/jigsaw/jigsaw.js';
import { type MadeOptions, printMade } from '../made.js';
import { readLocale, readNames, readWhole, readWord, readYears } from '../options.js';
import { readOwnSource } from '../own-list.js';
import { printText } from '../output.js';

interface Options extends MadeOptions {
  readonly years: string;
  readonly skills?: string;
  readonly own?: string;
  readonly number?: string;
  readonly kind: string;
  readonly rows: string;
  readonly columns: string;
  readonly level: string;
  readonly locale: string;
  readonly steps?: boolean;
}

export function makeJigsaw(options: Options): void {
  const locale = readLocale(options.locale);
  const base: Omit<JigsawRequest, 'seed'> = {
    years: readYears('--years', options.years),
    locale: locale.id,
    rows: readWhole('--rows', options.rows, LEAST_ROWS, MOST_ROWS),
    columns: readWhole('--columns', options.columns, LEAST_COLUMNS, MOST_COLUMNS),
    level: readWord('--level', options.level, JIGSAW_LEVELS),
    rowKind: readWord('--kind', options.kind, ROW_KINDS),
    ...(options.skills === undefined ? {} : { skills: readNames('--skills', options.skills) }),
    ...readOwnSource(options, locale),
  };
  printMade(options, {
    stream: 'jigsaws',
    most: 10_000,
    compose: (seed) => composeJigsaw({ ...base, seed }),
    show: (jigsaw) => printJigsaw(jigsaw, options.steps ?? false),
  });
}

function printJigsaw(jigsaw: Jigsaw, hasSteps: boolean): void {
  const { rows, columns, cells, pieces, given, seed, proof } = jigsaw;
  const width = Math.max(...cells.map(({ text }) => text.length));
  const lines = Array.from({ length: rows }, (_, row) => {
    const texts = cells
      .slice(row * columns, (row + 1) * columns)
      .map(({ text }, column) => (isPrinted(row, column) ? `[${text}]` : text));
    return `  ${texts.map((text) => text.padStart(width + 2)).join('')}`;
  });
  const printed = given.filter(([row, column]) => cells[row * columns + column]?.text !== '').length;
  const help =
    printed === 0
      ? 'nothing printed in the frame'
      : `${printed} ${printed === 1 ? 'cell' : 'cells'} printed in the frame [ ]`;
  const tries = proof.wrongTries === 0 ? 'no wrong tries' : `about ${proof.wrongTries} wrong tries`;
  printText(
    [
      `A jigsaw of ${pieces.length} pieces, ${rows} x ${columns}, ${proof.level} (seed ${seed}): one assembly makes every row true, ${proof.outlineFits} or more fit by shape; ${tries}; ${help}.`,
      ...lines,
      ...(hasSteps ? explainJigsaw(jigsaw).map(({ text }, i) => `  ${i + 1}. ${text}`) : []),
      '',
    ].join('\n'),
  );

  function isPrinted(row: number, column: number): boolean {
    return given.some((place) => place[0] === row && place[1] === column);
  }
}
