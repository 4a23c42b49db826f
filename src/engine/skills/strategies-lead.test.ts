// Whether the steps of a question lead to its answer in the way that they promise.
import { describe, expect, it } from 'vitest';
import { questionsOf, SAMPLES } from '../../../test/support/told-slips.js';
import { strategyFigure } from '../figures/strategy.js';
import { parseDayNumber } from '../numbers/day-number.js';
import { localeOf } from '../numbers/locale.js';
import { questionsAbout } from '../questions/generate.js';
import type { Question } from '../questions/question.js';
import { addSteps } from '../questions/strategies/adding.js';
import { Rng } from '../random/rng.js';
import { SKILLS } from './map.js';

describe('a strategy leads to the answer:', () => {
  it('starts with the larger number where it says so', () => {
    const astray: string[] = [];
    let said = 0;
    for (let a = 1; a < 100; a++)
      for (let b = 1; b < 100; b++) {
        const [first = '', second = ''] = addSteps(a, b, String);
        const start = /^Start with the larger number: (\d+ \+ )/.exec(first)?.[1];
        if (start === undefined) continue;
        said++;
        if (!second.startsWith(start)) astray.push(`${first}; ${second}`);
      }
    expect(said).toBeGreaterThan(0);
    expect(astray).toEqual([]);
  });

  it('makes a ten of the two numbers that make one', () => {
    const asked = questionsOf('add.three', 200);
    const sums = asked.flatMap(({ text, strategy }) => {
      const parts = /^(\d+) \+ (\d+) \+ (\d+)$/.exec(text)?.slice(1).map(Number);
      return parts === undefined ? [] : [{ parts, text, strategy }];
    });
    const last = sums.filter(({ parts: [a = 0, b = 0, c = 0] }) => {
      return b + c === 10 && (a + b) % 10 !== 0 && (a + c) % 10 !== 0;
    });
    expect(last.length).toBeGreaterThan(0);
    const astray = last.filter(({ parts: [, b, c], strategy }) => !strategy.includes(`${b} + ${c} = 10`));
    expect(astray.map(({ text, strategy }) => `${text} ${strategy.join('; ')}`)).toEqual([]);
  });

  it('says that a pair makes a ten only where it makes no more', () => {
    const pairs = [...SAMPLES.map(({ question }) => question), ...questionsOf('add.three', 100)].flatMap(
      ({ strategy }) =>
        strategy.flatMap((step) => {
          const [, how, a, b] =
            /^Look for a pair (that makes|whose ones make) a ten: (\d+) and (\d+)$/.exec(step) ?? [];
          return how === undefined ? [] : [{ step, isTen: how === 'that makes', sum: Number(a) + Number(b) }];
        }),
    );
    expect(new Set(pairs.map(({ isTen }) => isTen)).size).toBe(2);
    const astray = pairs.filter(({ isTen, sum }) => isTen !== (sum === 10) || sum % 10 !== 0);
    expect(astray.map(({ step }) => step)).toEqual([]);
  });

  it('rounds two numbers that differ', () => {
    const sums = questionsOf('add.estimate', 500).map(({ expression, text }) => ({ expression, text }));
    expect(sums.length).toBeGreaterThan(300);
    expect(sums.filter(({ text }) => /is (\S+) \+ \1 if/.test(text)).map(({ text }) => text)).toEqual([]);
  });

  it('takes off only multiples that a child knows from a table', () => {
    const asked = questionsOf('div.remainder.large', 200).filter(({ text }) => text.includes('÷'));
    expect(asked.length).toBeGreaterThan(50);
    const unknown = asked.filter(({ text, strategy }) => {
      const divisor = Number(/÷ (\d)/.exec(text)?.[1]);
      const taken = strategy.flatMap((step) =>
        [...step.matchAll(/− (\d+)/g)].map(([, part]) => Number(part)),
      );
      return taken.some((part) => !/^\d0*$/.test(String(part / divisor)));
    });
    expect(unknown.map(({ text, strategy }) => `${text} ${strategy.join('; ')}`)).toEqual([]);
  });

  it('works out the square of a fraction or a decimal', () => {
    const squares = SAMPLES.filter(
      ({ skill, question }) => skill.id === 'mult.squares' && /^\S*[./]/.test(question.text),
    );
    expect(squares.length).toBeGreaterThan(3);
    expect(
      squares.filter(({ question }) => question.strategy.length < 2).map(({ question }) => question.text),
    ).toEqual([]);
  });

  it('shares pancakes in parts and says money in money', () => {
    const shared = questionsOf('div.exact-share', 100).filter(({ text }) => text.includes('pancakes'));
    expect(shared.length).toBeGreaterThan(10);
    expect(shared.filter(({ answer }) => answer.kind !== 'fraction').map(({ text }) => text)).toEqual([]);
    const none = SAMPLES.filter(({ question }) => question.strategy[0]?.startsWith('No groups') === true);
    const inMoney = none.filter(({ question }) => question.answer.kind === 'money');
    expect(inMoney.length).toBeGreaterThan(0);
    expect(
      none.filter(({ question: { strategy, answer } }) => !strategy[0]?.endsWith(` make ${answer.text}`)),
    ).toEqual([]);
  });

  it('draws the side of an enlarged drawing as often as it fits', () => {
    const twos = questionsOf('ratio.scale', 400).filter(
      ({ expression }) => expression?.endsWith(' / 2') === true,
    );
    const parts = twos.map((question) => {
      const figure = strategyFigure(question);
      return figure?.kind === 'bar-model' ? figure.parts : [];
    });
    expect(parts.length).toBeGreaterThan(3);
    for (const part of parts) expect(new Set(part)).toEqual(new Set(['2']));
  });

  it('takes the second step of a story from where the first one landed', () => {
    const stories = questionsOf('add.two-step', 200);
    expect(stories.length).toBeGreaterThan(100);
    const astray = stories.flatMap(({ text, expression, strategy }) => {
      const [start = 0, off = 0] = (expression ?? '').split(/ [-+] /).map(Number);
      const left = start - off;
      const starts = new RegExp(`(?:^|, so )${left} \\+ |^Double ${left} `);
      return strategy.some((step) => starts.test(step)) ? [] : [`${text} ${strategy.join('; ')}`];
    });
    expect(astray).toEqual([]);
  });

  it('ends on the answer', () => {
    const ids = ['place.negative.order', 'place.bundles', 'place.bundles.hundred', 'mult.factors'];
    const asked = ids.flatMap((id) => questionsOf(id, 100)).filter(({ answer }) => answer.kind === 'number');
    expect(asked.length).toBeGreaterThan(200);
    const numbersOf = (words: string): string[] => words.match(/−?\d+/g) ?? [];
    const astray = asked.filter(
      ({ answer, strategy }) => !numbersOf(strategy.at(-1) ?? '').includes(numbersOf(answer.text)[0] ?? ''),
    );
    expect(astray.map(({ text, strategy }) => `${text} ${strategy.join('; ')}`)).toEqual([]);
  });

  it('ends on no wrong number', () => {
    const numbersOf = (step: string): string[] =>
      step.match(/−?[$£]?\d+(?:[\u00a0,]\d{3})*(?:\.\d+)?(?: \d+\/\d+|\/\d+)?[cp¢%°]?/g) ?? [];
    expect(numbersOf('22 − 20 = 2, $1.05 and 2 1/2')).toEqual(['22', '20', '2', '$1.05', '2 1/2']);
    // What something is compared with may well be a wrong answer.
    const compares = (step: string) => /^In order|[<>]| than /.test(step);
    const astray = SAMPLES.filter(({ question: { answer, slips, strategy } }) => {
      const step = strategy.at(-1) ?? '';
      const last = numbersOf(step).at(-1) ?? '';
      const wrong = slips.find(({ text }) => text === last);
      if (wrong === undefined || wrong.text === answer.text || !step.endsWith(last) || compares(step))
        return false;
      // A sum with the gap filled in ends on what it makes; but not where just that is the mistake.
      return !numbersOf(step).includes(answer.text) || wrong.misconception === 'equals.answer-next';
    });
    expect(
      astray.map(({ skill, question }) => `${skill.id}: ${question.text} ${question.strategy.join('; ')}`),
    ).toEqual([]);
  });

  it('counts tens and hundreds with classes that do not multiply yet', () => {
    const early = SAMPLES.filter(
      ({ skill }) =>
        skill.strand === 'place-value' && (skill.year < 2 || skill.id === 'place.bundles.hundred'),
    );
    expect(early.length).toBeGreaterThan(500);
    const ahead = early.filter(({ question }) => question.strategy.some((step) => step.includes('×')));
    expect([...new Set(ahead.map(({ skill, question }) => `${skill.id}: ${question.text}`))]).toEqual([]);
  });

  it('shows no × or ÷ to classes that have not met them', () => {
    const early = SAMPLES.filter(
      ({ skill }) => skill.year < 2 && (skill.strand === 'multiplication' || skill.strand === 'division'),
    );
    expect(early.length).toBeGreaterThan(300);
    const ahead = early.filter(({ question }) =>
      [question.text, ...question.strategy].some((line) => /[×÷]/.test(line)),
    );
    expect([...new Set(ahead.map(({ skill, question }) => `${skill.id}: ${question.text}`))]).toEqual([]);
  });

  it('calls no number that lies halfway close to one of its neighbours', () => {
    const halves = questionsOf('add.estimate', 300).flatMap(({ text, strategy }) => {
      const unit = text.includes('nearest ten ') ? 10 : 100;
      return [...text.matchAll(/\d+/g)]
        .map(([digits]) => Number(digits))
        .filter((n) => 2 * (n % unit) === unit)
        .map((n) => ({ n, text, strategy }));
    });
    expect(halves.length).toBeGreaterThan(5);
    const astray = halves.filter(
      ({ n, strategy }) => !strategy.some((step) => step.startsWith(`${n} is halfway `)),
    );
    expect(astray.map(({ text, strategy }) => `${text} ${strategy.join('; ')}`)).toEqual([]);
  });

  it('counts up to a difference where that is the way', () => {
    const differences = questionsOf('sub.difference', 200);
    expect(differences.length).toBeGreaterThan(0);
    const back = differences.filter(({ strategy }) => strategy.some((step) => step.includes('−')));
    expect(back.map(({ text, strategy }) => `${text} ${strategy.join('; ')}`)).toEqual([]);
  });

  it('says the number in words where words are asked for', () => {
    const astray = SAMPLES.map(({ question }) => question).filter(
      ({ text, answer, strategy }) =>
        /^How is .* written in words/.test(text) && strategy.at(-1)?.endsWith(answer.text) !== true,
    );
    expect(astray.map(({ text, strategy }) => `${text} ${strategy.join('; ')}`)).toEqual([]);
  });

  it('begins with a mixed number as the question prints it, and ends with the answer as it is printed', () => {
    const locale = localeOf('en-AU');
    const asked = ['12 5/6', '2 1/2', '4 2/3', '1 3/4', '5 1/6', '47 23/25'].flatMap((input) => {
      const day = parseDayNumber(input, locale);
      if (!day.ok) throw new Error(day.error.message);
      return SKILLS.filter(({ id }) => /^frac\.|^dec\.fraction|^pct\.match/.test(id)).flatMap((skill) =>
        questionsAbout(skill, day.value, new Rng(7).fork(`${skill.id} ${input}`), locale, 12),
      );
    });
    expect(asked.length).toBeGreaterThan(300);
    const lines = ({ text, strategy }: Question) => `${text}: ${strategy.join('; ')}`;
    const above = (line: string) =>
      [...line.matchAll(/(?<![\d ]\d* |\d)(\d+)\/(\d+)/g)].flatMap(([fraction, top, bottom]) =>
        Number(top) > Number(bottom) ? [fraction] : [],
      );
    const outOfNowhere = asked.filter(({ text, strategy }) =>
      strategy.some((step, i) => {
        const known = [text, ...strategy.slice(0, i)].join(' ');
        return above(step.split('=')[0] ?? '').some((fraction) => !known.includes(fraction));
      }),
    );
    expect(outOfNowhere.map(lines)).toEqual([]);
    // To fill up to the next whole, the step is the sum that the answer completes.
    const computed = asked.filter(
      ({ skill, text, answer, strategy }) =>
        answer.kind === 'fraction' &&
        !/^frac\.(?:next-whole|whole-part)$/.test(skill) &&
        !text.startsWith('Which') &&
        strategy.at(-1)?.includes(' = '),
    );
    expect(computed.length).toBeGreaterThan(100);
    const unfinished = computed.filter(
      ({ answer, strategy }) => !strategy.at(-1)?.endsWith(`= ${answer.text}`),
    );
    expect(unfinished.map(lines)).toEqual([]);
  });

  it('rounds in the end, and names the number that is asked for', () => {
    const rounded = questionsOf('dec.round', 100);
    expect(rounded.length).toBeGreaterThan(50);
    expect(
      rounded
        .filter(({ answer, strategy }) => strategy.at(-1)?.endsWith(` ${answer.text}`) !== true)
        .map(({ text }) => text),
    ).toEqual([]);
    const compared = ['dec.compare', 'dec.compare.ragged'].flatMap((id) => questionsOf(id, 100));
    expect(compared.some(({ text }) => text.startsWith('Which is less'))).toBe(true);
    const other = compared.filter(
      ({ text, strategy: [step = ''] }) => step.includes(' less ') !== text.startsWith('Which is less'),
    );
    expect(other.map(({ text }) => text)).toEqual([]);
  });

  it('gives no number as its own reason', () => {
    const parity = questionsOf('place.odd-even', 200);
    expect(parity.some(({ text }) => /^Is \d odd or even\?$/.test(text))).toBe(true);
    const circles = parity.filter(({ strategy }) =>
      strategy.some((step) => /\b(\d+) is (odd|even), so \1 is \2\b/.test(step)),
    );
    expect(circles.map(({ text }) => text)).toEqual([]);
  });
});
