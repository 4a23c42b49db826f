// Repeating patterns of shapes, colours and numbers.
import { wholeAnswer, wordAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

const CORES = ['AB', 'AB', 'AAB', 'ABB', 'ABC'] as const;

type Core = (typeof CORES)[number];

const SHAPE_WORDS = ['circle', 'square', 'triangle', 'star', 'heart'] as const;

const COLOUR_WORDS = ['red', 'blue', 'green', 'yellow'] as const;

interface Repeating {
  readonly core: Core;
  readonly words: readonly string[];
  /** Items shown, always more than one and a half repeats. */
  readonly shown: number;
}

function repeatingItems({ core, words, shown }: Repeating): string[] {
  return Array.from(
    { length: shown + 1 },
    (_, i) => words['ABC'.indexOf(core[i % core.length] ?? 'A')] ?? '',
  );
}

/** What comes after the items shown: after a red alone would not say it where two reds stand in the part that repeats. */
function nextStep(shown: readonly string[], answer: string | number, core: Core): string {
  const begun = shown.slice(shown.length - (shown.length % core.length));
  return begun.length === 0
    ? `After ${shown.slice(-core.length).join(', ')} it starts again: ${answer}`
    : `It has started again with ${begun.join(', ')}; next comes ${answer}`;
}

function chooseRepeating(words: readonly string[], rng: Rng): Repeating {
  const core = rng.pick(CORES);
  return { core, words, shown: core.length === 2 ? rng.int(4, 5) : rng.int(5, 6) };
}

const repeatingWords = templateOf<Repeating>({
  id: 'repeat',
  free: (rng) => chooseRepeating(rng.shuffle(rng.chance(0.5) ? SHAPE_WORDS : COLOUR_WORDS), rng),
  draft: (chosen) => {
    const items = repeatingItems(chosen);
    const answer = items.at(-1) ?? '';
    const shown = items.slice(0, -1);
    return {
      text: `What comes next: ${shown.join(', ')}, ?`,
      answer: wordAnswer(answer),
      expression: null,
      features: {
        size: chosen.core.length - 2,
        adjust: chosen.core === 'ABC' || chosen.core === 'AB' ? 0 : 0.3,
        drawn: true,
      },
      strategy: [
        `The part that repeats is: ${items.slice(0, chosen.core.length).join(', ')}`,
        nextStep(shown, answer, chosen.core),
      ],
      slips: [
        { misconception: 'pattern.last-again', answer: wordAnswer(shown.at(-1) ?? '') },
        { misconception: 'pattern.starts-over', answer: wordAnswer(shown[0] ?? '') },
        {
          misconception: 'pattern.step-missed',
          answer: wordAnswer(items[items.length % chosen.core.length] ?? ''),
        },
      ],
      figure: { kind: 'pattern', items: [...shown, '?'] },
    };
  },
});

const repeatingNumbers = templateOf<Repeating & { readonly day: number }>({
  id: 'repeat-numbers',
  free: (rng) => ({ ...chooseRepeating(rng.shuffle(['1', '2', '3', '5', '8']), rng), day: 0 }),
  on: onWhole(1, 20, (n, rng) => {
    const others = rng.shuffle([1, 2, 3, 4, 5, 6, 8].filter((m) => m !== n)).map(String);
    return { ...chooseRepeating([String(n), ...others], rng), day: n };
  }),
  draft: (chosen, { locale }) => {
    const items = repeatingItems(chosen);
    const shown = items.slice(0, -1);
    const answer = Number(items.at(-1));
    return {
      text: `What comes next: ${shown.join(', ')}, ?`,
      answer: wholeAnswer(answer, locale),
      expression: null,
      features: {
        size: chosen.core.length - 2,
        adjust: chosen.core === 'ABC' || chosen.core === 'AB' ? 0.1 : 0.4,
      },
      strategy: [
        `The part that repeats is: ${items.slice(0, chosen.core.length).join(', ')}`,
        nextStep(shown, answer, chosen.core),
      ],
      slips: wholeSlips(
        [
          ['pattern.last-again', Number(shown.at(-1))],
          ['pattern.counts-on', Number(shown.at(-1)) + 1],
          ['pattern.starts-over', Number(shown[0])],
        ],
        locale,
      ),
      figure: { kind: 'pattern', items: [...shown, '?'] },
      usesNumber: `repeats a pattern with ${chosen.day}`,
    };
  },
});

export const REPEATING_SKILLS: readonly Skill[] = [
  {
    id: 'alg.repeat',
    family: 'what comes next',
    title: 'Continue a repeating pattern',
    year: 0,
    fluentYear: 1,
    strand: 'algebra',
    prerequisites: ['place.next.20'],
    codes: { ac9: ['AC9MFA01', 'AC9M1A02'], england: ['NC-Y2-position-1'], ccss: [] },
    templates: [repeatingWords, repeatingNumbers],
  },
];
