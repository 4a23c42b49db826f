// How many dots at a glance, and counting on and back by ones.
import type { FigureSpec } from '../../figures/figure.js';
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

const glance = templateOf<readonly [count: number, layout: 'dice' | 'row']>({
  id: 'glance',
  free: (rng) => [rng.int(1, 6), rng.pick(['dice', 'dice', 'row'])],
  draft: ([count, layout], { locale }) => ({
    text: 'Look once: how many dots are there?',
    answer: wholeAnswer(count, locale),
    expression: String(count),
    features: { drawn: true, size: count > 4 ? 1 : 0, adjust: layout === 'row' ? 0.2 : -0.4 },
    strategy: [count > 3 ? `See ${count - 2} and 2 more: ${count}` : `See ${count} at once`],
    slips: wholeSlips(
      [
        ['shape.one-short', count + 1],
        ['shape.one-short', count > 1 ? count - 1 : null],
      ],
      locale,
    ),
    figure: { kind: 'dots', groups: [count], layout } satisfies FigureSpec,
  }),
});

const twoGroups = templateOf<readonly [a: number, b: number]>({
  id: 'two-groups',
  free: (rng) => [rng.int(2, 6), rng.int(1, 5)],
  draft: ([a, b], { locale }) => ({
    text: 'How many dots are in the two groups together?',
    answer: wholeAnswer(a + b, locale),
    expression: `${a} + ${b}`,
    features: { drawn: true, size: (a + b) / 5, tie: a === b },
    strategy: [`${a} + ${b} = ${a + b}`],
    slips: wholeSlips(
      [
        ['addend.left-out', a],
        ['fact.one-out', a + b - 1],
        ['shape.one-short', a + b + 1],
      ],
      locale,
    ),
    figure: { kind: 'dots', groups: [a, b], layout: 'dice' } satisfies FigureSpec,
  }),
});

const stepsOn = templateOf<readonly [n: number, steps: number, up: boolean]>({
  id: 'count-on',
  free: (rng) => [rng.int(18, 99), rng.int(2, 5), rng.chance(0.5)],
  on: onWhole(6, 120, (n, rng) => [n, rng.int(2, 5), rng.chance(0.5)]),
  draft: ([n, steps, up], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const end = up ? n + steps : n - steps;
    const words = Array.from({ length: steps }, (_, i) => say(up ? n + i + 1 : n - i - 1));
    return {
      text: `Count ${up ? 'on' : 'back'} ${steps} from ${say(n)}. Where do you stop?`,
      answer: wholeAnswer(end, locale),
      expression: `${n} ${up ? '+' : '-'} ${steps}`,
      features: {
        size: steps / 4,
        carries: Math.floor(n / 10) === Math.floor(end / 10) ? 0 : 1,
        adjust: up ? -0.2 : 0.2,
      },
      strategy: [words.join(', ')],
      slips: wholeSlips(
        [
          ['count.off-by-one', up ? end - 1 : end + 1],
          ['count.wrong-way', up ? n - steps : n + steps],
        ],
        locale,
      ),
      usesNumber: `counts ${up ? 'on' : 'back'} from ${say(n)}`,
    };
  },
});

export const FIRST_COUNTING_SKILLS: readonly Skill[] = [
  {
    id: 'place.glance',
    title: 'See how many at a glance',
    year: 0,
    fluentYear: 0,
    strand: 'place-value',
    prerequisites: [],
    codes: {
      ac9: ['AC9MFN02'],
      england: ['NC-Y1-place-4'],
      ccss: ['K.CC.B.4', 'K.CC.B.4a', 'K.CC.B.4b', 'K.CC.B.5'],
    },
    templates: [glance, twoGroups],
  },
  {
    id: 'place.count-on',
    title: 'Count on and back by ones',
    year: 1,
    fluentYear: 1,
    strand: 'place-value',
    prerequisites: ['place.glance', 'place.next.20'],
    codes: { ac9: ['AC9M1N01'], england: ['NC-Y1-place-1', '1NPV-1'], ccss: ['K.CC.A.1', '1.OA.C.5'] },
    templates: [stepsOn],
  },
];
