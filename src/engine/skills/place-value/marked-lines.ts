// Numbers on a line with marked steps, and equal parts of a hundred or a thousand.
import { formatWhole } from '../../numbers/format.js';
import { multiply, rational, toNumber } from '../../numbers/rational.js';
import { decimalAnswer, wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { operand, shown } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { templateOf } from '../template-of.js';

interface Line {
  readonly from: number;
  readonly to: number;
  readonly steps: number;
  readonly at: number;
}

function lineText({ from, to, steps, at }: Line, say: (n: number) => string): string {
  return `From ${say(from)} to ${say(to)} there are ${steps} equal steps. What is at step ${at}?`;
}

function onLine(id: string, spans: readonly (readonly [from: number, to: number, steps: number])[]) {
  return templateOf<Line>({
    id,
    free: (rng) => {
      const [from, to, steps] = rng.pick(spans);
      return { from, to, steps, at: rng.int(1, steps - 1) };
    },
    draft: (line, { locale }) => {
      const step = rational(Math.round((line.to - line.from) * 1000), 1000 * line.steps);
      const start = rational(Math.round(line.from * 1000), 1000);
      const jump = multiply(step, rational(line.at));
      const value = rational(start.n * step.d + line.at * step.n * start.d, start.d * step.d);
      const say = (n: number) => shown(rational(Math.round(n * 1000), 1000), locale);
      const slip = (n: number) => rational(Math.round(n * 1000), 1000);
      return {
        text: lineText(line, say),
        answer: decimalAnswer(value, locale),
        expression: `${operand(start)} + ${line.at} * ${operand(step)}`,
        features: { drawn: true, extraSteps: line.from === 0 ? 0.5 : 1, size: line.steps === 10 ? 0 : 0.4 },
        strategy: [
          `One step is ${say(line.to - line.from)} ÷ ${line.steps} = ${shown(step, locale)}`,
          `${line.at} × ${shown(step, locale)} = ${shown(jump, locale)}`,
          ...(line.from === 0
            ? []
            : [`${say(line.from)} + ${shown(jump, locale)} = ${shown(value, locale)}`]),
        ],
        slips: [
          { misconception: 'meas.scale-by-ones', answer: decimalAnswer(slip(line.from + line.at), locale) },
          {
            misconception: 'count.off-by-one',
            answer: decimalAnswer(slip(toNumber(value) - toNumber(step)), locale),
          },
        ],
        figure: {
          kind: 'number-line',
          from: line.from,
          to: line.to,
          step: toNumber(step),
          labels: [line.from, line.to],
          mark: toNumber(value),
        },
      };
    },
  });
}

const SMALL_SPANS = [
  [0, 20, 10],
  [0, 50, 5],
  [0, 50, 10],
  [0, 100, 10],
  [0, 100, 5],
  [0, 100, 4],
  [20, 30, 10],
  [50, 100, 10],
] as const;

const LARGE_SPANS = [
  [0, 1000, 10],
  [0, 1000, 5],
  [0, 10_000, 10],
  [0, 100_000, 10],
  [0, 1_000_000, 10],
  [0, 1_000_000, 5],
  [4000, 5000, 10],
  [2_000_000, 3_000_000, 10],
  [0, 1, 10],
  [3, 4, 10],
  [6.2, 6.3, 10],
  [0, 2, 10],
] as const;

const partOfWhole = (id: string, whole: number) =>
  templateOf<readonly [whole: number, parts: number, many: number]>({
    id,
    free: (rng) => {
      const parts = rng.pick([2, 4, 5, 10]);
      return [whole, parts, rng.int(1, parts - 1)];
    },
    draft: ([, parts, many], { locale }) => {
      const step = whole / parts;
      const say = (n: number) => formatWhole(n, locale);
      return {
        text: `${say(whole)} is cut into ${parts} equal parts. How much are ${many} of them?`.replace(
          'are 1 of',
          'is 1 of',
        ),
        answer: wholeAnswer(step * many, locale),
        expression: `${whole} / ${parts} * ${many}`,
        features: { extraSteps: many > 1 ? 0.6 : 0, size: parts === 4 ? 0.5 : 0 },
        strategy: [
          `${say(whole)} ÷ ${parts} = ${say(step)}`,
          ...(many > 1 ? [`${many} × ${say(step)} = ${say(step * many)}`] : []),
        ],
        slips: wholeSlips(
          [
            ['ratio.one-group', step],
            ['pie.slices-counted', many > 1 ? many : parts],
            ['times.neighbour', step * (many + 1)],
          ],
          locale,
        ),
      };
    },
  });

export const MARKED_LINE_SKILLS: readonly Skill[] = [
  {
    id: 'place.line',
    title: 'Find numbers on a line to 100',
    year: 2,
    fluentYear: 3,
    strand: 'place-value',
    prerequisites: ['place.bundles', 'alg.skip'],
    codes: { ac9: ['AC9M2N01'], england: ['NC-Y2-place-3', '2NPV-2', '3NPV-4'], ccss: ['2.MD.B.6'] },
    templates: [onLine('step', SMALL_SPANS), partOfWhole('part-of-hundred', 100)],
  },
  {
    id: 'place.line.large',
    title: 'Find large numbers and decimals on a line',
    year: 5,
    fluentYear: 6,
    strand: 'place-value',
    prerequisites: ['place.line', 'place.million', 'dec.parts'],
    codes: { ac9: ['AC9M5N01'], england: ['6NPV-3', '5NPV-4', '6NPV-4'], ccss: [] },
    templates: [onLine('step', LARGE_SPANS), partOfWhole('part-of-thousand', 1000)],
  },
];
