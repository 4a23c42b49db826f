// Sums beyond two numbers and facts to 5: what the other files of the strand leave out.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Skill } from '../skill.js';
import { countOf } from '../story.js';
import { onWhole, templateOf } from '../template-of.js';
import { pagesStory, withStory } from '../retold.js';

const withinFive = templateOf<readonly [a: number, b: number, form: 'sum' | 'take' | 'missing']>({
  id: 'within-five',
  free: (rng) => {
    const total = rng.int(2, 5);
    return [rng.int(1, total - 1), total, rng.pick(['sum', 'take', 'missing'] as const)];
  },
  on: onWhole(2, 5, (n, rng) => [rng.int(1, n - 1), n, rng.pick(['take', 'missing'] as const)]),
  draft: ([a, total, form], { locale }) => {
    const b = total - a;
    const text = { sum: `${a} + ${b}`, take: `${total} − ${a}`, missing: `${a} + ? = ${total}` }[form];
    const value = form === 'sum' ? total : b;
    return {
      text,
      answer: wholeAnswer(value, locale),
      expression: form === 'sum' ? `${a} + ${b}` : `${total} - ${a}`,
      features: {
        size: total / 5,
        tie: a === b,
        drawn: true,
        unknownInside: form === 'missing',
        adjust: form === 'take' ? 0.2 : 0,
      },
      strategy: [`${total} is ${a} and ${b}`],
      slips: wholeSlips(
        [
          [
            form === 'missing' ? 'missing.adds-all' : 'operation.swapped',
            form === 'sum' ? Math.abs(a - b) : total + a,
          ],
          ['count.off-by-one', form === 'sum' ? value - 1 : value + 1],
          ['fact.one-out', form === 'sum' ? value + 1 : value - 1],
        ],
        locale,
      ),
      figure:
        form === 'take'
          ? { kind: 'part-whole', whole: String(total), parts: [String(a), '?'] }
          : { kind: 'ten-frame', filled: a, second: form === 'sum' ? b : 0 },
      usesNumber: `takes ${total} apart`,
    };
  },
});

const STORY_THINGS = ['shells', 'beads', 'acorns', 'marbles'] as const;

const joinStory = templateOf<readonly [a: number, b: number, things: string, away: boolean]>({
  id: 'story-five',
  free: (rng) => {
    const total = rng.int(3, 5);
    return [total, rng.int(1, total - 1), rng.pick(STORY_THINGS), rng.chance(0.5)];
  },
  draft: ([total, part, things, away], { locale }) => ({
    text: away
      ? `You have ${countOf(total, things)} and give ${part} away. How many are left?`
      : `You have ${countOf(total - part, things)} and find ${part} more. How many now?`,
    answer: wholeAnswer(away ? total - part : total, locale),
    expression: away ? `${total} - ${part}` : `${total - part} + ${part}`,
    features: { story: true, size: total / 5, adjust: away ? 0.2 : 0 },
    strategy: [away ? `${total} − ${part} = ${total - part}` : `${total - part} + ${part} = ${total}`],
    slips: wholeSlips(
      [
        ['operation.swapped', away ? total + part : Math.abs(total - 2 * part)],
        ['addend.left-out', away ? total : total - part],
        ['fact.one-out', away ? total - part + 1 : total + 1],
      ],
      locale,
    ),
    figure: away
      ? { kind: 'bar-model', whole: String(total), parts: [String(part), '?'] }
      : { kind: 'bar-model', whole: '?', parts: [String(total - part), String(part)] },
  }),
});

const fourNumbers = templateOf<readonly [number, number, number, number]>({
  id: 'four',
  free: (rng) => {
    const a = rng.int(11, 39);
    const d = 10 - (a % 10);
    const b = 10 * rng.int(1, 3) + (d === 10 ? 0 : d);
    const c = rng.int(11, 39);
    const [p, q, r, s] = rng.shuffle([a, b, c, rng.int(11, 29)]);
    return [p ?? a, q ?? b, r ?? c, s ?? 20];
  },
  on: onWhole(11, 60, (a, rng) => {
    const b = 10 * rng.int(1, 3) + ((10 - (a % 10)) % 10);
    return [a, rng.int(11, 29), b, rng.int(11, 29)];
  }),
  draft: ([a, b, c, d], { locale }) => {
    const numbers = [a, b, c, d];
    const pairs = [
      [0, 1, 2, 3],
      [0, 2, 1, 3],
      [0, 3, 1, 2],
    ] as const;
    const best =
      pairs.find(([p, q]) => ((numbers[p] ?? 0) + (numbers[q] ?? 0)) % 10 === 0) ??
      pairs.find(([, , r, s]) => ((numbers[r] ?? 0) + (numbers[s] ?? 0)) % 10 === 0) ??
      pairs[0];
    const [p, q, r, s] = best.map((i) => numbers[i] ?? 0) as [number, number, number, number];
    const total = a + b + c + d;
    const carried = Math.floor(numbers.reduce((sum, n) => sum + (n % 10), 0) / 10);
    return {
      text: `${a} + ${b} + ${c} + ${d}`,
      answer: wholeAnswer(total, locale),
      expression: `${a} + ${b} + ${c} + ${d}`,
      features: { extraSteps: 1, size: total / 120 },
      strategy: [
        `${p} + ${q} = ${p + q}`,
        `${r} + ${s} = ${r + s}`,
        `${p + q} + ${r + s} = ${formatWhole(total, locale)}`,
      ],
      slips: wholeSlips(
        [
          ['addend.left-out', total - d],
          ['carry.dropped', carried > 0 ? total - 10 * carried : null],
          ['carry.always-one', carried > 1 ? total - 10 * (carried - 1) : null],
          ['carry.extra', carried === 0 ? total + 10 : null],
          ['fact.one-out', total + 1],
        ],
        locale,
      ),
      usesNumber: `adds ${a} and three more numbers`,
    };
  },
});

export const MORE_SUM_SKILLS: readonly Skill[] = [
  {
    id: 'add.within5',
    title: 'Add and take away within 5',
    year: 0,
    fluentYear: 0,
    strand: 'addition',
    prerequisites: ['place.glance'],
    codes: { ac9: ['AC9MFN05'], england: ['NC-Y1-addsub-2'], ccss: ['K.OA.A.1', 'K.OA.A.5', 'K.OA.A.2'] },
    templates: [withinFive, joinStory],
  },
  {
    id: 'add.four',
    title: 'Add four two-digit numbers',
    year: 3,
    fluentYear: 4,
    strand: 'addition',
    prerequisites: ['add.three', 'add.2d2d.carry'],
    codes: { ac9: ['AC9M3N03'], england: ['NC-Y3-addsub-4'], ccss: ['2.NBT.B.6'] },
    templates: withStory(pagesStory, [fourNumbers]),
  },
];
