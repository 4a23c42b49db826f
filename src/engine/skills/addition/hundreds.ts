// Hundreds added to and taken from three-digit numbers, which no column needs.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

function hundreds(take: boolean) {
  return templateOf<readonly [n: number, hundreds: number]>({
    id: take ? 'take' : 'add',
    free: (rng) => {
      const count = rng.int(2, 6);
      return [take ? rng.int(100 * count + 11, 989) : rng.int(111, 989 - 100 * count), count];
    },
    on: onWhole(101, 999, (n, rng) => {
      const most = take ? Math.floor(n / 100) : 9 - Math.floor(n / 100);
      return most < 1 ? null : [n, rng.int(1, most)];
    }),
    draft: ([n, count], { locale }) => {
      const change = 100 * count;
      const total = take ? n - change : n + change;
      const sign = take ? '−' : '+';
      return {
        text: `${n} ${sign} ${change}`,
        answer: wholeAnswer(total, locale),
        expression: `${n} ${take ? '-' : '+'} ${change}`,
        features: { size: count / 6, adjust: -0.2 },
        strategy: [
          `Only the hundreds change: ${Math.floor(n / 100)} ${sign} ${count} = ${Math.floor(total / 100)}`,
          `${n} ${sign} ${change} = ${formatWhole(total, locale)}`,
        ],
        slips: wholeSlips(
          [
            ['place.wrong-step', take ? n - 10 * count : n + 10 * count],
            ['place.face-value', take ? n - count : n + count],
            ['operation.swapped', take ? n + change : n > change ? n - change : null],
          ],
          locale,
        ),
        usesNumber: `${take ? 'takes' : 'adds'} ${change} ${take ? 'from' : 'to'} ${n}`,
      };
    },
  });
}

export const HUNDREDS_SKILLS: readonly Skill[] = [
  {
    id: 'add.hundreds',
    title: 'Add and subtract hundreds',
    year: 3,
    fluentYear: 3,
    strand: 'addition',
    prerequisites: ['place.bundles.hundred', 'add.tens', 'sub.tens'],
    codes: { ac9: ['AC9M3N03'], england: ['NC-Y3-addsub-1c'], ccss: ['2.NBT.B.8'] },
    templates: [hundreds(false), hundreds(true)],
  },
];
