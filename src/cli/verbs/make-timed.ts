// afterbell make timed
import {
  composeTimed,
  FEWEST_QUESTIONS,
  MOST_FORMS,
  MOST_QUESTIONS,
} from '#engine/activities/timed/compose.js';
import { LADDER, type LevelPlan } from '#engine/activities/timed/ladder.js';
import type { Timed } from '#engine/activities/timed/timed.js';
import { skillById } from '#engine/skills/map.js';
import { UsageFailure } from '../failure.js';
import { type MadeOptions, printMade } from '../made.js';
import { readLocale, readNames, readWhole } from '../options.js';
import { readOwnFile } from '../own-list.js';
import { printText } from '../output.js';

interface Options extends MadeOptions {
  readonly level?: string;
  readonly skills?: string;
  readonly own?: string;
  readonly forms: string;
  readonly questions: string;
  readonly locale: string;
}

export function makeTimed(options: Options): void {
  const base = {
    level: levelOf(options),
    forms: readWhole('--forms', options.forms, 1, MOST_FORMS),
    questions: readWhole('--questions', options.questions, FEWEST_QUESTIONS, MOST_QUESTIONS),
    locale: readLocale(options.locale).id,
  };
  printMade(options, {
    stream: 'timed',
    most: 1000,
    compose: (seed) => composeTimed({ ...base, seed }),
    show: printTimed,
  });
}

/** The place on the ladder, or a level made of the skills or the own questions named. */
function levelOf({ level, skills, own }: Options): number | LevelPlan {
  if ([level, skills, own].filter((one) => one !== undefined).length !== 1)
    throw new UsageFailure('Give one of --level, --skills and --own, such as --level 6.');
  if (own !== undefined) {
    const questions = readOwnFile(own).map(({ question }) => question);
    return {
      id: 'own',
      title: 'My questions',
      year: Math.max(0, ...questions.map(({ year }) => year)),
      room: 'roomy',
      source: { kind: 'own', questions },
    };
  }
  if (level !== undefined) return readWhole('--level', level, 1, LADDER.length);
  const ids = readNames('--skills', skills ?? '');
  const known = ids.flatMap((id) => skillById(id) ?? []);
  return {
    id: `skills:${ids.join()}`,
    title: known.map(({ title }) => title).join(', '),
    year: Math.max(0, ...known.map(({ year }) => year)),
    room: 'roomy',
    source: { kind: 'skills', skills: ids },
  };
}

function printTimed({ level, title, seed, forms, proof }: Timed): void {
  const lines = forms.flatMap(({ form, questions, meanDifficulty, digits }) => [
    `Form ${form}: ${questions.length} questions, ${digits} digits, mean difficulty ${meanDifficulty}`,
    ...questions.map(({ text, answer }, i) => `  ${String(i + 1).padStart(3)}  ${text}    ${answer.text}`),
    '',
  ]);
  const name = level === null ? title : `Level ${level}, ${title}`;
  printText(
    [
      `${name} (seed ${seed}): each of its ${proof.space} questions is asked ${proof.fewestAsked} to ${proof.mostAsked} times.`,
      ...lines,
    ].join('\n'),
  );
}
