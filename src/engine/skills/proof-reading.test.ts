// What a proof-reader would mark in the texts and strategy steps of every skill, in all four classrooms.
import { describe, expect, it } from 'vitest';
import { drawFigure } from '../figures/draw.js';
import { strategyFigure } from '../figures/strategy.js';
import { LOCALES, localeOf } from '../numbers/locale.js';
import { generateQuestions } from '../questions/generate.js';
import { misconceptionOf } from '../questions/misconceptions.js';
import { SKILLS } from './map.js';

interface Line {
  readonly where: string;
  readonly text: string;
  readonly isStep: boolean;
}

const QUESTIONS = LOCALES.flatMap((locale) =>
  SKILLS.flatMap((skill) =>
    generateQuestions(skill, 20, 11, localeOf(locale)).map((question) => ({ skill, locale, question })),
  ),
);

const LINES: readonly Line[] = QUESTIONS.flatMap(({ skill, locale, question }) => {
  const where = `${skill.id} ${locale}`;
  return [
    { where, text: question.text, isStep: false },
    ...question.strategy.map((text) => ({ where, text, isStep: true })),
  ];
});

const marked = (isWrong: (line: Line) => boolean): string[] => [
  ...new Set(LINES.filter(isWrong).map(({ where, text }) => `${where}: ${text}`)),
];

/** Words in -s that may follow a 1 and are no plurals ("is 1 less than"). */
const NO_PLURAL = new Set([
  'less',
  'plus',
  'times',
  'is',
  'has',
  'as',
  'was',
  'comes',
  'becomes',
  'divides',
  'stands',
  'makes',
  'needs',
]);

function hasPluralAfterOne(text: string): boolean {
  // "3 1/2 cups", "0.1 metres" and "$1 notes" are right; a lone 1 is not.
  return [...text.matchAll(/(?<![\d.,/$£]|\d[\s\u00a0])1[\s\u00a0](?:more[\s\u00a0])?([a-z]{2,}s)\b/g)].some(
    ([, word]) => !NO_PLURAL.has(word ?? ''),
  );
}

function hasWrongArticle(text: string): boolean {
  return (
    // Eight, eighty, eight hundred, eleven and eighteen begin with a vowel; so do most words in a, e, i, o.
    /\b[Aa][\s\u00a0](?:8|8\d|8\d\d|11|18)(?![\d./])(?!,\d)/.test(text) ||
    /\b[Aa]n[\s\u00a0](?:[1-79]|1[02-79])(?![\d/])/.test(text) ||
    /(?<!\b(?:at|At|point|From|from|of|a,)[\s\u00a0])\ba[\s\u00a0](?!and\b|is\b|on\b|one\b|once\b)[aeio][a-z]/.test(
      text,
    )
  );
}

/** The largest number that a title names as its range ("within 20", "to a hundred"), or null. */
function rangeOf(title: string): number | null {
  const found = /\b(?:within|to|beyond 1|make) (10|20|100|120|1000)\b(?! or| and|,)/.exec(title)?.[1];
  if (found !== undefined) return Number(found);
  const word = /\bto a (hundred|thousand|million)\b/.exec(title)?.[1];
  return word === undefined ? null : ({ hundred: 100, thousand: 1000, million: 1_000_000 }[word] ?? null);
}

/** Whole numbers written in a question, group marks taken out. */
const numbersIn = (text: string): number[] =>
  [...text.replace(/(?<=\d)[\s\u00a0\u2009\u202f,](?=\d{3}\b)/g, '').matchAll(/\d+/g)].map(Number);

describe('what a proof-reader would mark', () => {
  it('has no double space and no space before a comma, a stop or a colon', () => {
    expect(marked(({ text }) => / {2}|[\s\u00a0][,.;:](?!\d)|\([\s\u00a0]|[\s\u00a0]\)/.test(text))).toEqual(
      [],
    );
  });

  it('keeps a number and its unit on one line', () => {
    const parted = /\d (?:mm|cm|m|km|g|kg|mL|L|min|h|°C)\b/;
    expect(marked(({ text }) => parted.test(text))).toEqual([]);
  });

  it('has no plural after 1', () => {
    expect(hasPluralAfterOne('Cut 1 pieces') && hasPluralAfterOne('1 more degrees')).toBe(true);
    expect(marked(({ text }) => hasPluralAfterOne(text))).toEqual([]);
  });

  it('has a and an before the right numbers and words', () => {
    expect(hasWrongArticle('A 8 cm side') && hasWrongArticle('an 7') && hasWrongArticle('a apple')).toBe(
      true,
    );
    expect(marked(({ text }) => !/\ba (?:and b|can)\b|\b\da \+/.test(text) && hasWrongArticle(text))).toEqual(
      [],
    );
  });

  it('begins every step with a capital, a number or a sign, and ends none with a full stop', () => {
    const isLower = (text: string) => /^[a-z]{2}/.test(text);
    expect(marked(({ text, isStep }) => isStep && (isLower(text) || /[.!]$/.test(text)))).toEqual([]);
  });

  it('asks "How many … does it have?"', () => {
    expect(marked(({ text }) => /\bHow many \S+ has /.test(text))).toEqual([]);
  });

  it('speaks American to American classrooms, in figures told to a listener too', () => {
    const british =
      /\b(?:centi|milli|kilo)?(?:metre|litre)s?\b|colour|\bgrey|labelled|favourite|neighbour|-angled\b|anticlockwise|measuring jug|scales\b|\b(?:go|goes|going|count) round\b|\bway round\b/i;
    const found = QUESTIONS.filter(({ locale }) => locale === 'en-US').flatMap(({ skill, question }) =>
      [
        question.text,
        question.answer.text,
        ...question.strategy,
        ...question.slips.map(({ text }) => text),
        question.figure ? drawFigure(question.figure, { locale: 'en-US' }).alt : '',
      ]
        .filter((text) => british.test(text))
        .map((text) => `${skill.id}: ${text}`),
    );
    expect([...new Set(found)]).toEqual([]);
  });

  it('says no word twice in a row', () => {
    expect(marked(({ text }) => /\b([a-z]{2,})[\s\u00a0]\1\b/i.test(text))).toEqual([]);
  });

  it('has no step that sets a thing equal to itself', () => {
    const isCircle = (step: string) => /(?:^|[:,] )(\S+) = \1(?:$|,)/.test(step);
    expect(marked(({ text, isStep }) => isStep && isCircle(text))).toEqual([]);
    // A part of a hundred and a fraction that needs no renaming come up too seldom to be met in a few questions.
    const many = SKILLS.filter(({ strand }) => strand === 'percentages' || strand === 'fractions').flatMap(
      (skill) => generateQuestions(skill, 200, 11, localeOf('en-AU')),
    );
    expect(many.some(({ text }) => text.startsWith('Of 100 people'))).toBe(true);
    expect(many.flatMap(({ strategy }) => strategy).filter(isCircle)).toEqual([]);
  });

  it('writes halfway as one word', () => {
    expect(marked(({ text }) => /half[- ]way/i.test(text))).toEqual([]);
  });

  it('groups the digits of numbers from 10 000 on, and from 1,000 on where commas are used', () => {
    const bare = (text: string, from: number) =>
      [...text.matchAll(/(?<![\d.,/:])\d{4,}(?![\d./:])/g)].some(([digits]) => Number(digits) >= from);
    const isYear = (where: string) => where.startsWith('place.roman');
    expect(
      marked(({ where, text }) => !isYear(where) && bare(text, /-(?:GB|US)$/.test(where) ? 1000 : 10_000)),
    ).toEqual([]);
  });

  it('groups the digits of a figure as those of the text beside it', () => {
    const alts = QUESTIONS.filter(({ locale }) => locale === 'en-GB').flatMap(({ question, locale }) =>
      [question.figure, strategyFigure(question)].flatMap((spec) =>
        spec ? [drawFigure(spec, { locale }).alt] : [],
      ),
    );
    expect(alts.some((alt) => /\d,\d{3}/.test(alt))).toBe(true);
    expect(alts.filter((alt) => /(?<![\d.,])\d{4,}|\d\u00a0\d{3}/.test(alt))).toEqual([]);
  });

  it('keeps to the range that the title names', () => {
    const beyond = QUESTIONS.filter(({ skill, question }) => {
      const range = rangeOf(skill.title);
      return range !== null && numbersIn(question.text).some((n) => n > range);
    });
    expect([...new Set(beyond.map(({ skill, question }) => `${skill.title}: ${question.text}`))]).toEqual([]);
    expect(SKILLS.filter((skill) => rangeOf(skill.title) !== null).length).toBeGreaterThan(12);
  });

  it('offers no name that fits as well as the right one', () => {
    const nets = QUESTIONS.filter(({ question }) => /fold into/.test(question.text));
    expect(nets.length).toBeGreaterThan(20);
    // A cube is a prism too.
    const twice = nets.filter(
      ({ question }) => question.answer.text === 'a cube' && /prism/.test(question.text),
    );
    expect(twice.map(({ question }) => question.text)).toEqual([]);
  });

  it('cuts no more off than there is', () => {
    const stories = SKILLS.filter((skill) => skill.id === 'meas.length-story').flatMap((skill) =>
      generateQuestions(skill, 500, 3, localeOf('en-AU')),
    );
    expect(stories.length).toBeGreaterThan(400);
    expect(stories.filter(({ answer }) => Number(answer.value) < 1).map(({ text }) => text)).toEqual([]);
  });

  it('gives every question at least one step', () => {
    const bare = QUESTIONS.filter(({ question }) => question.strategy.length === 0);
    expect(bare.map(({ skill, question }) => `${skill.id}: ${question.text}`)).toEqual([]);
  });
});

const numberOf = (value: string | null): number => {
  const [top, bottom = '1'] = (value ?? 'none').split('/');
  return Number(top) / Number(bottom);
};

/** What the sentence of a misconception says about the wrong number beside the right one. */
const SAID: Readonly<Record<string, (wrong: number, right: number) => boolean>> = {
  'round.cut-off': (wrong, right) => wrong < right,
  'decimals.cut-short': (wrong, right) => wrong < right,
  'money.rounds-down': (wrong, right) => wrong < right,
  'round.always-up': (wrong, right) => wrong > right,
  'decimals.rounds-up-always': (wrong, right) => wrong > right,
  'money.rounds-up': (wrong, right) => wrong > right,
  'divide.neighbour': (wrong, right) => Math.abs(Math.abs(wrong - right) - 1) < 1e-9,
  'group.rounds-up': (wrong, right) => wrong === right + 1,
  'divide.remainder-as-one': (wrong, right) => wrong === Math.ceil(right),
};
/** Asks which number is the last to be rounded there: who cuts off goes too far. */
const ASKS_BACKWARDS = 'place.round.back';

describe('wrong answers', () => {
  it('come out as their sentence says', () => {
    const told = new Set<string>();
    const untrue = QUESTIONS.filter(({ skill }) => skill.id !== ASKS_BACKWARDS).flatMap(({ question }) =>
      question.slips.flatMap(({ misconception, text, value }) => {
        const [wrong, right] = [numberOf(value), numberOf(question.answer.value)];
        const isTrue = SAID[misconception];
        if (isTrue === undefined || Number.isNaN(wrong) || Number.isNaN(right)) return [];
        told.add(misconception);
        return isTrue(wrong, right) ? [] : [`${question.text} ${text}: ${misconception}`];
      }),
    );
    expect([...new Set(untrue)]).toEqual([]);
    expect([...told].sort()).toEqual(Object.keys(SAID).sort());
  });

  it('are not said to compare, mix up or give what the question does not have', () => {
    const remainders = /remainder|left over|and \?\//;
    const needs: Readonly<Record<string, RegExp>> = {
      'divide.quotient-for-remainder': remainders,
      'divide.gap-for-rest': remainders,
      'fractions.multiplies-both': /×|÷|\bof\b|Half|Double|share|swims|need/,
      'times.as-plus': /^(?!.*\d \+ \d).*/,
    };
    const strange = QUESTIONS.flatMap(({ question }) =>
      question.slips
        .filter(({ misconception }) => needs[misconception]?.test(question.text) === false)
        .map(({ misconception, text }) => `${question.text} ${text}: ${misconception}`),
    );
    expect([...new Set(strange)]).toEqual([]);
  });
});

describe('what a wrong answer is said to tell', () => {
  /** Slips of one misconception that do not come out as its sentence says. */
  const unfit = (
    id: string,
    isUnfit: (slip: string, question: (typeof QUESTIONS)[number]['question']) => boolean,
  ): string[] => [
    ...new Set(
      QUESTIONS.flatMap(({ skill, question }) =>
        question.slips
          .filter((slip) => slip.misconception === id && isUnfit(slip.text, question))
          .map((slip) => `${skill.id}: ${question.text} ${slip.text}`),
      ),
    ),
  ];
  /** The two numbers of a bare "a + b", "a − b" or "a × b", or null. */
  const twoNumbers = (text: string, sign: string): [number, number] | null => {
    const [first, second, ...more] = text
      .replace(/(?<=\d)[\u00a0,](?=\d{3}\b)/g, '')
      .split(` ${sign} `)
      .map(Number);
    return first === undefined || second === undefined || more.length > 0 || Number.isNaN(first + second)
      ? null
      : [first, second];
  };
  const valueOf = (slip: string) => Number(slip.replace(/[\u00a0,]/g, ''));

  it('counts the start as a step: one too few when adding, one too many when taking away', () => {
    expect(
      unfit('count.off-by-one', (slip, { text }) => {
        const added = twoNumbers(text, '+');
        const taken = twoNumbers(text, '−');
        return (
          (added !== null && valueOf(slip) !== added[0] + added[1] - 1) ||
          (taken !== null && valueOf(slip) !== taken[0] - taken[1] + 1)
        );
      }),
    ).toEqual([]);
  });

  it('adds the two numbers only where there are two, to just that sum', () => {
    expect(
      unfit('times.as-plus', (slip, { text }) => {
        const factors = twoNumbers(text, '×');
        if (factors !== null) return Math.abs(valueOf(slip) - factors[0] - factors[1]) > 1e-9;
        return /^Double|^What is twice| × \S+ × | × \? = /.test(text);
      }),
    ).toEqual([]);
  });

  it('leaves a number as it is when multiplying by zero only where there is a zero to multiply by', () => {
    expect(
      unfit('times.zero-keeps', (_, { text }) => !/(?:^| )0(?: |$)/.test(text) && !/\?/.test(text)),
    ).toEqual([]);
  });

  it('keeps the part beyond the whole, or drops it', () => {
    const isWhole = (slip: string) => /^[$£]?\d+$/.test(slip);
    expect(unfit('exact.part-kept', isWhole)).toEqual([]);
    expect(unfit('exact.part-dropped', (slip) => !isWhole(slip))).toEqual([]);
  });

  it('does at the last digit only what has a point', () => {
    expect(unfit('exact.point-ignored', (_, { text }) => !text.includes('.'))).toEqual([]);
  });

  it('takes the next odd number for the next prime', () => {
    expect(
      unfit('primes.odd-means-prime', (slip, { text }) => {
        const after = Number(/first prime number after (\d+)/.exec(text)?.[1] ?? Number.NaN);
        return after >= 0 && valueOf(slip) !== after + 1 + (after % 2);
      }),
    ).toEqual([]);
  });
});

/** What stands after the number of an answer: "cm", "day" for one or more of them, or nothing. */
const unitOf = (answer: string): string => answer.replace(/^[−£$]?\d[\d\s\u00a0.,/]*/, '').replace(/s$/, '');

/** What a sentence about a child speaks of, and what must then be in the question, its answer or the skill's title. */
const SPEAKS_OF: readonly (readonly [said: RegExp, asked: RegExp])[] = [
  [/\bperimeter\b/, /perimeter/],
  [/\bsolid\b|\bface\b/, /box|cube|solid|prism|pyramid|cylinder|cone|sphere|net|fold/i],
  [/\bsymmetry\b/, /symmetry/],
  [/\bnames? of the angles\b/, /acute|obtuse/],
  [/\bnames of the triangles\b/, /equilateral/],
  [/\bstarting day or month\b/, /day|month|week/i],
  [/\ba unit\b/, /unit/],
  [/\bpower of ten\b/, /\d[\s\u00a0](?:mm|cm|m|km|g|kg|mL|L)\b|\bof a \w*(?:met|lit)(?:re|er)|of a \w*gram/],
  [/\bturns the other way\b/, /turn/],
  [/\bspecial shape\b/, /\bIs (?:every|a)\b/],
];

describe('the sentences about wrong answers', () => {
  const slips = QUESTIONS.flatMap(({ skill, locale, question }) =>
    question.slips.map((slip) => ({ skill, locale, question, slip })),
  );
  const told = ({ skill, question, slip }: (typeof slips)[number]) =>
    `${skill.id}: ${question.text} [${slip.text}, ${slip.misconception}]`;

  it('speak of what is in the question', () => {
    const unfit = slips.filter(({ skill, question, slip }) => {
      const does = misconceptionOf(slip.misconception)?.does ?? '';
      const asked = `${skill.title} ${question.text} ${question.answer.text}`;
      return SPEAKS_OF.some(([said, needed]) => said.test(does) && !needed.test(asked));
    });
    expect([...new Set(unfit.map(told))]).toEqual([]);
  });

  it('belong to a wrong answer in the unit of the right one', () => {
    // A choice may be offered in another unit, and a length of time come out in whole hours.
    const unlike = slips.filter(
      ({ question: { answer }, slip }) =>
        /^(?:number|decimal|fraction)$/.test(answer.kind) && unitOf(answer.text) !== unitOf(slip.text),
    );
    expect([...new Set(unlike.map(told))]).toEqual([]);
  });
});

/** What a question must have, or must not have, for a child to be able to do what the sentence says. Its figure counts as text. */
const ROOM: Readonly<Record<string, { readonly needs?: RegExp; readonly bars?: RegExp }>> = {
  'equals.answer-next': { needs: /=/ },
  'equals.carries-on': { needs: /=/ },
  'equals.wrong-way': { needs: /=.*\+|\+.*=/, bars: /\u2212/ },
  'equals.difference-wrong-way': { needs: /\u2212.*=.*\u2212/ },
  'inequality.end-included': { bars: /[≤≥]/ },
  'inequality.end-left-out': { needs: /[≤≥]/ },
  'order.brackets-ignored': { needs: /\(/ },
  'letter.joined': { needs: /[nab]/ },
  'pattern.adds-one': { bars: /goes up (?:in|by)/ },
  'graph.value-not-change': { needs: /change|rise|fall|moves|longer|taller|warmer|more/ },
  'data.other-row': { needs: /^Which/ },
  'data.other-bar': { needs: /column graph|bar graph|bar chart/ },
  'table.other-line': { needs: /table/ },
  'data.larger-given': {
    needs: /more|than|difference|cheaper|dearer|save|taller|longer|warmer|colder|rise|fall/,
  },
};

describe('what a child seems to do', () => {
  it('is something that the question leaves room for', () => {
    const wrong = QUESTIONS.flatMap(({ skill, question }) =>
      question.slips.flatMap(({ misconception }) => {
        const room = ROOM[misconception];
        const fits =
          room === undefined ||
          ((room.needs?.test(question.text) ?? true) && !(room.bars?.test(question.text) ?? false));
        return fits ? [] : [`${skill.id}: ${misconception}: ${question.text}`];
      }),
    );
    expect([...new Set(wrong)]).toEqual([]);
  });

  const slipsOf = (id: string) =>
    QUESTIONS.filter(({ skill }) => skill.id === id).flatMap(({ question }) =>
      question.slips.map(({ misconception, text }) => ({
        misconception,
        wrong: Number(text),
        right: Number(question.answer.text),
        numbers: numbersIn(question.text),
        text: question.text,
      })),
    );

  it('stops a step early where the first number is counted too, on the way down as on the way up', () => {
    const early = slipsOf('alg.think').filter(({ misconception }) => misconception === 'count.off-by-one');
    expect(early.length).toBeGreaterThan(10);
    for (const { text, wrong, right } of early) expect(wrong - right, text).toBe(/adds/.test(text) ? 1 : -1);
  });

  it('makes one quarter turn too many or too few, and not three', () => {
    const turns = slipsOf('shape.turn').filter(({ text }) => /right angles/.test(text));
    expect(turns.length).toBeGreaterThan(5);
    for (const { text, wrong, right } of turns) expect(Math.abs(wrong - right), text).toBe(1);
  });

  it('keeps a whole or a ten too many only where the known part is the larger', () => {
    const tens = slipsOf('alg.missing').filter(
      ({ misconception }) => misconception === 'complement.extra-ten',
    );
    expect(tens.length).toBeGreaterThan(5);
    for (const { text, numbers } of tens) {
      const [low = 0, high = 0] = [Math.min(...numbers), Math.max(...numbers)];
      expect(high % 10, text).toBeLessThan(low % 10);
    }
  });

  it('mixes up mean, median, mode and range only with one of them', () => {
    const lists = ['data.mode', 'data.median', 'data.range', 'data.mean'].flatMap(slipsOf);
    const mixed = lists.filter(({ misconception }) => misconception === 'data.measures-mixed-up');
    expect(mixed.length).toBeGreaterThan(20);
    for (const { text, wrong, numbers } of mixed) {
      const order = numbers.toSorted((a, b) => a - b);
      const middle = order.length % 2 === 1 ? [order[(order.length - 1) / 2]] : [];
      expect([...middle, (order.at(-1) ?? 0) - (order[0] ?? 0)], `${text} ${wrong}`).toContain(wrong);
    }
  });

  it('reads a column or a point that stands beside the one asked for', () => {
    const read = QUESTIONS.filter(({ skill }) => skill.id === 'data.columns').flatMap(({ question }) => {
      const slip = question.slips.find(({ misconception }) => misconception === 'data.other-bar');
      const bars = question.figure?.kind === 'bar-chart' ? question.figure.bars : [];
      const at = bars.findIndex(({ label }) => question.text.includes(label));
      return slip ? [{ wrong: Number(slip.text), beside: [bars[at - 1]?.value, bars[at + 1]?.value] }] : [];
    });
    expect(read.length).toBeGreaterThan(5);
    for (const { wrong, beside } of read) expect(beside).toContain(wrong);
  });
});

describe('bars drawn to scale', () => {
  const widths = (whole: string, part: string): number[] =>
    [
      ...drawFigure({ kind: 'bar-model', whole, parts: [part, '?'] }).svg.matchAll(
        /<rect[^>]* width="([\d.]+)"/g,
      ),
    ].map(([, width]) => Number(width));

  it.each([
    ['80 000', '60 000'],
    ['80,000', '60,000'],
    ['80 cm', '60 cm'],
    ['$80', '$60'],
  ])('gives three quarters of a bar of %s to %s', (whole, part) => {
    const [first = 0, second = 0] = widths(whole, part);
    expect(first / (first + second)).toBeGreaterThan(0.65);
    expect(first / (first + second)).toBeLessThan(0.8);
  });
});
