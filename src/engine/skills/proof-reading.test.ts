// What a proof-reader would mark in the texts and strategy steps of every skill, in all four classrooms.
import { describe, expect, it } from 'vitest';
import { daySamples, freeSamples } from '../../../test/support/samples.js';
import { drawFigure } from '../figures/draw.js';
import { strategyFigure } from '../figures/strategy.js';
import { localeOf } from '../numbers/locale.js';
import { generateQuestions } from '../questions/generate.js';
import { MISCONCEPTIONS } from '../questions/misconceptions.js';
import type { Question } from '../questions/question.js';
import { SKILLS } from './map.js';

interface Line {
  readonly where: string;
  readonly text: string;
  readonly isStep: boolean;
}

const FREE = freeSamples(11);
const ABOUT_DAYS = daySamples(11);
const QUESTIONS = [...FREE, ...ABOUT_DAYS];

const LINES: readonly Line[] = QUESTIONS.flatMap(({ skill, locale, question }) => {
  const where = `${skill.id} ${locale}`;
  return [
    { where, text: question.text, isStep: false },
    ...(question.usesNumber === null ? [] : [{ where, text: question.usesNumber, isStep: false }]),
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
  'appears',
]);

function hasPluralAfterOne(text: string): boolean {
  // "3 1/2 cups", "0.1 metres" and "$1 notes" are right; a lone 1 is not.
  return [
    ...text.matchAll(
      /(?<![\d.,/$£]|\d[\s\u00a0])1[\s\u00a0](?:(?:more|wanted|quarter(?= turn))[\s\u00a0])?([a-z]{2,}s)\b/g,
    ),
  ].some(([, word]) => !NO_PLURAL.has(word ?? ''));
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
    const parted = /\d (?:mm|cm|m|km|g|kg|m?[Ll]|min|h|°[CF])\b/;
    expect(marked(({ text }) => parted.test(text))).toEqual([]);
  });

  it('keeps a pair of coordinates on one line', () => {
    const isPair = (text: string) => /\(−?\d+,\s−?\d+\)/.test(text);
    expect(LINES.filter(({ text }) => isPair(text)).length).toBeGreaterThan(100);
    expect(marked(({ text }) => isPair(text.replaceAll('\u00a0', '_')))).toEqual([]);
  });

  it('tells a right angle like any other where its size is asked', () => {
    const asked = QUESTIONS.filter(({ question }) => /^(?:How big is|Is) this angle/.test(question.text));
    const right = asked.filter(
      ({ question: { figure } }) => figure?.kind === 'angle' && figure.degrees === 90,
    );
    expect(right.length).toBeGreaterThan(5);
    const squares = right.filter(
      ({ question: { figure } }) => figure && /square/.test(drawFigure(figure).alt + drawFigure(figure).svg),
    );
    expect(squares.map(({ question }) => question.text)).toEqual([]);
  });

  it('has no plural after 1', () => {
    expect(hasPluralAfterOne('Cut 1 pieces') && hasPluralAfterOne('1 quarter turns')).toBe(true);
    expect(marked(({ text }) => hasPluralAfterOne(text))).toEqual([]);
  });

  it('has no plural after 1 in an answer either, right or wrong', () => {
    const answers = QUESTIONS.flatMap(({ skill, question: { answer, accepts, slips } }) =>
      [answer.text, ...accepts, ...slips.map(({ text }) => text)].map((text) => `${skill.id}: ${text}`),
    );
    expect(answers).toContain('meas.temperature: 1\u00a0degree');
    expect([...new Set(answers.filter((text) => hasPluralAfterOne(text)))]).toEqual([]);
  });

  it('lists no accepted form twice', () => {
    const twice = QUESTIONS.filter(({ question: { accepts } }) => new Set(accepts).size < accepts.length);
    expect([
      ...new Set(twice.map(({ question }) => `${question.text} ${question.accepts.join('/')}`)),
    ]).toEqual([]);
  });

  it('measures and pays without signs of multiplying or dividing in classes that do not use them yet', () => {
    const early = QUESTIONS.filter(
      ({ skill }) => skill.year <= 1 && ['measures', 'money', 'time'].includes(skill.strand),
    );
    expect(early.some(({ skill }) => skill.id === 'meas.full')).toBe(true);
    const signed = early.filter(({ question: { text, strategy } }) =>
      /[×÷]/.test([text, ...strategy].join(' ')),
    );
    expect([...new Set(signed.map(({ skill, question }) => `${skill.id}: ${question.text}`))]).toEqual([]);
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
      /\b(?:centi|milli|kilo)?(?:metre|litre)s?\b|colour|\bgrey|labelled|favourite|neighbour|-angled\b|anticlockwise|measuring jug|scales\b|harbour|hundred square|\bturned round\b|\bbrackets\b|\bcinema\b|\bdiscs?\b|\btins?\b|pudding|\b(?:go|goes|going|count) round\b|\bway round\b|timetable|\b(?:counts?|goes up|go up) in [\d,]+s\b/i;
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

  it('names skills and mistakes in words that every country shares', () => {
    const ofOneCountry =
      /\b(?:centi|milli|kilo)?(?:metre|meter|litre|liter)s?\b|colou?r|\bgr[ae]y\b|neighbou?r|\bdollar|\bcents?\b|\bpence|\bpenny|\bbank ?notes?\b|\bcoins and notes|\bbills?\b|hundred square|column graph|\bbrackets\b|parenthes|\blots?\b|\btins?\b|\bqueue|pudding|levell|modell|\bone out\b|favou?rite|(?:recogn|organ)i[sz]e|(?:anti|counter)clockwise|\b(?:turns?|go|goes|once|way|draw|count)\b(?: the subtraction)? round\b/i;
    const texts = [
      ...SKILLS.map(({ title }) => title),
      ...Object.values(MISCONCEPTIONS).flatMap(({ does, help }) => [does, help]),
    ];
    expect(ofOneCountry.test('Change between dollars and cents')).toBe(true);
    expect(texts.filter((text) => ofOneCountry.test(text))).toEqual([]);
  });

  it('writes the litre as l in Britain and as L elsewhere, in figures too', () => {
    const signsIn = (ids: readonly string[]) =>
      QUESTIONS.filter(({ locale }) => ids.includes(locale)).flatMap(({ question }) => [
        ...JSON.stringify(question).matchAll(/(?:[\d?][\s\u00a0]|"unit":")(m?[lL])(?![\w-])/g),
      ]);
    const kinds = (ids: readonly string[]) => new Set(signsIn(ids).map(([, sign]) => sign));
    expect(kinds(['en-GB'])).toEqual(new Set(['l', 'ml']));
    expect(kinds(['en-AU', 'en-NZ', 'en-US'])).toEqual(new Set(['L', 'mL']));
  });

  it('takes the temperature as the country does, in figures too', () => {
    const scalesIn = (ids: readonly string[]) =>
      QUESTIONS.filter(({ locale }) => ids.includes(locale)).flatMap(({ question }) => [
        ...JSON.stringify(question).matchAll(/°[CF]/g),
      ]);
    expect(new Set(scalesIn(['en-US']).map(String))).toEqual(new Set(['°F']));
    expect(new Set(scalesIn(['en-AU', 'en-NZ', 'en-GB']).map(String))).toEqual(new Set(['°C']));
  });

  it('writes out a unit that stands without a number', () => {
    const bare = /(?<![\d?]|\bof a|\bmany)[\s\u00a0](?:mm|cm|km|kg|m?[lL])(?![\w²³-])/;
    const uses = QUESTIONS.flatMap(({ question }) => question.usesNumber ?? []);
    expect(bare.test('turns 7 pints into L')).toBe(true);
    expect([...new Set(uses.filter((text) => bare.test(text)))]).toEqual([]);
  });

  it('calls only Monday to Friday weekdays, shares between two and buys a part of a kilogram', () => {
    const slack = /\bweekday\b|\bamong 2\b|\b(?<!\d )\d+\/\d+ kilograms\b/;
    expect(slack.test('shares $20.50 among 2') && slack.test('buys 1/2 kilograms')).toBe(true);
    expect(slack.test('buys 1 1/2 kilograms')).toBe(false);
    expect(marked(({ text }) => slack.test(text))).toEqual([]);
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
      [...text.matchAll(/(?<![\d.,/:])\d{4,}(?![\d.:])/g)].some(([digits]) => Number(digits) >= from);
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

  it("asks for no number that stands on the day's board", () => {
    const isGiven = ({ text, answer }: Question) =>
      /written in digits|Roman numeral [A-Z]|^What number is \d|opposite of \u2212/.test(text) ||
      (/^In \d/.test(text) && text.startsWith(`In ${answer.text},`));
    const worth = QUESTIONS.filter(({ question }) => /^In \d.*worth\?$/.test(question.text));
    expect(new Set(worth.map(({ question }) => question.answer.kind)).size).toBe(2);
    const given = [...ABOUT_DAYS, ...worth].filter(({ question }) => isGiven(question));
    expect(FREE.some(({ question }) => question.text.includes('written in digits'))).toBe(true);
    expect(given.map(({ question }) => question.text)).toEqual([]);
  });

  it('leaves the counting of a single group of dots to who hears it', () => {
    const told = FREE.flatMap(({ question: { figure, answer } }) =>
      figure?.kind === 'dots' && figure.groups.length === 1 ? [[drawFigure(figure).alt, answer.text]] : [],
    );
    expect(new Set(told.map(([, count]) => count)).size).toBe(6);
    const words = ['', 'one dot', 'two', 'three dots', 'four', 'five', 'six'];
    const given = told.filter(
      ([alt = '', count = '']) => /\d/.test(alt) || alt.includes(words[Number(count)] || '?'),
    );
    expect(given).toEqual([]);
  });

  it('keeps to the range that the title names', () => {
    const beyond = FREE.filter(({ skill, question }) => {
      const range = rangeOf(skill.title);
      return range !== null && numbersIn(question.text).some((n) => n > range);
    });
    expect([...new Set(beyond.map(({ skill, question }) => `${skill.title}: ${question.text}`))]).toEqual([]);
    expect(SKILLS.filter((skill) => rangeOf(skill.title) !== null).length).toBeGreaterThan(12);
  });

  it('has an "or" before the last of the things to choose from', () => {
    const lists = QUESTIONS.filter(({ question }) => /^Which of these [^:]*: .*\?$/.test(question.text));
    // Group marks are commas too.
    expect(lists.some(({ question }) => /\d,\d{3}/.test(question.text))).toBe(true);
    expect(
      lists.filter(({ question }) => !/ or [^,]/.test(question.text)).map(({ question }) => question.text),
    ).toEqual([]);
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

  it("writes the day's number where it says how a question uses it", () => {
    const isPart = (text: string, n: string) =>
      new RegExp(`(?<![\\d.,/])${n.replace(/[.$]/g, '\\$&')}(?![\\d/]|[.,\u00a0]\\d)`).test(text);
    expect(isPart('adds 1 answer', '1') && !isPart('adds 21 and 1/2', '1')).toBe(true);
    const left = ABOUT_DAYS.filter(({ skill, day, question: { usesNumber } }) => {
      const uses = usesNumber ?? '';
      // Years are written without a gap, and a part of a dollar or a pound is asked in cents or pence.
      const year = skill.id.startsWith('place.roman') ? day.replace(/[\u00a0,]/, '') : day;
      const minor = skill.strand === 'money' && Number(day) < 1 ? String(Math.round(100 * Number(day))) : day;
      return ![day, year, minor].some((n) => isPart(uses, n));
    });
    expect(left.map(({ skill, day, question }) => `${skill.id} ${day}: ${question.usesNumber}`)).toEqual([]);
  });

  it('draws every column high enough to see', () => {
    const heights = QUESTIONS.flatMap(({ question: { figure, text } }) =>
      figure?.kind === 'bar-chart' ? [{ text, values: figure.bars.map(({ value }) => value) }] : [],
    );
    expect(heights.some(({ values }) => Math.max(...values) > 60)).toBe(true);
    const low = heights.filter(({ values }) => values.some((n) => n > 0 && 20 * n < Math.max(...values)));
    expect(low.map(({ text }) => text)).toEqual([]);
  });

  it('draws the product on the left of an equals sign as it is written', () => {
    const drawn = QUESTIONS.flatMap(({ question: { figure, text } }) => {
      const [, rows, columns] = /^(\d+) × (\d+) = /.exec(text) ?? [];
      return figure?.kind === 'array' && rows && columns ? [{ text, figure, rows, columns }] : [];
    });
    expect(drawn.length).toBeGreaterThan(20);
    const turned = drawn.filter(
      ({ figure, rows, columns }) => figure.rows !== Number(rows) || figure.columns !== Number(columns),
    );
    expect(turned.map(({ text }) => text)).toEqual([]);
  });

  it('gives every question at least one step', () => {
    const bare = QUESTIONS.filter(({ question }) => question.strategy.length === 0);
    expect(bare.map(({ skill, question }) => `${skill.id}: ${question.text}`)).toEqual([]);
  });
});
