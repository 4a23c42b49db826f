// The drawn strategy must agree with the question: the jumps, dots and parts are added up again here.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AnswerKind } from '../questions/question.js';
import { drawFigure } from './draw.js';
import type { FigureSpec } from './figure.js';
import { strategyFigure } from './strategy.js';

function figureFor(
  expression: string | null,
  value: number | string,
  strategy: string[] = [],
  kind: AnswerKind = 'number',
) {
  return strategyFigure({
    expression,
    strategy,
    answer: { kind, text: String(value), value: String(value) },
  });
}

function lineOf(figure: FigureSpec | null) {
  if (figure?.kind !== 'number-line') throw new Error(`a number line was expected, not ${figure?.kind}`);
  const jumps = figure.jumps ?? [];
  const stops = [jumps[0]?.from, ...jumps.map((jump) => jump.to)];
  return { figure, jumps, stops };
}

describe('addition and subtraction', () => {
  it('start from the number that the steps name first', () => {
    const { stops } = lineOf(figureFor('5 + 25', 30, ['5 + 5 = 10, so 25 + 5 = 30']));
    expect(stops).toEqual([25, 30]);
  });

  it('jump by tens, then ones, when the steps do not say otherwise', () => {
    expect(lineOf(figureFor('47 + 38', 85)).stops).toEqual([47, 77, 85]);
    expect(lineOf(figureFor('63 - 29', 34)).stops).toEqual([63, 43, 34]);
    expect(lineOf(figureFor('8 + 5', 13)).stops).toEqual([8, 10, 13]);
    expect(lineOf(figureFor('12 - 7', 5)).stops).toEqual([12, 10, 5]);
    expect(lineOf(figureFor('52 - 48', 4)).stops).toEqual([48, 50, 52]);
  });

  it('follow the worked steps when they lead from one number to the next', () => {
    expect(lineOf(figureFor('89 + 39', 128, ['89 + 40 = 129', '129 \u2212 1 = 128'])).stops).toEqual([
      89, 129, 128,
    ]);
    expect(lineOf(figureFor('100 - 77', 23, ['77 + 3 = 80', '80 + 20 = 100', '3 + 20 = 23'])).stops).toEqual([
      77, 80, 100,
    ]);
    expect(lineOf(figureFor('65 - 45', 20, ['65 \u2212 20 = 45'])).stops).toEqual([65, 45]);
  });

  it('keep to the numbers of the question when the steps begin with the tens of one', () => {
    expect(lineOf(figureFor('62 + 10', 72, ['60 + 10 = 70', '70 + 2 = 72'])).stops).toEqual([62, 72]);
  });

  it('follow steps whose numbers are grouped, and group the labels of their jumps', () => {
    const steps = ['67\u00a0000 + 30\u00a0000 = 97\u00a0000', '97\u00a0000 + 8000 = 105\u00a0000'];
    const { figure, stops } = lineOf(figureFor('67000 + 38000', 105_000, steps));
    expect(stops).toEqual([67_000, 97_000, 105_000]);
    expect(drawFigure(figure, { locale: 'en-AU' }).alt).toContain('A jump labelled +30\u00a0000 goes');
    expect(drawFigure(figure, { locale: 'en-AU' }).alt).toContain('A jump labelled +8000 goes');
    expect(drawFigure(figure, { locale: 'en-GB' }).alt).toContain('A jump labelled +8,000 goes');
  });

  it('do not go back to the size of the step that was found first', () => {
    const found = ['10 \u2212 6 = 4', '10 + 4 = 14'];
    expect(lineOf(figureFor('10 + 4', 14, found)).stops).toEqual([10, 14]);
    expect(lineOf(figureFor('8400 + 50', 8450, ['8400 \u2212 8350 = 50', '8400 + 50 = 8450'])).stops).toEqual(
      [8400, 8450],
    );
  });

  it('keep to the numbers of the question when the steps take from its tens', () => {
    expect(lineOf(figureFor('85 - 60', 25, ['80 \u2212 60 = 20', '20 + 5 = 25'])).stops).toEqual([85, 25]);
  });

  it('follow a near double from the number that is doubled', () => {
    expect(lineOf(figureFor('7 + 6', 13, ['6 + 6 = 12', '12 + 1 = 13'])).stops).toEqual([6, 12, 13]);
  });

  it('jump once where a double is known, and upwards to a part that is sought', () => {
    expect(lineOf(figureFor('9 + 9', 18, ['Double 9 is 18'])).stops).toEqual([9, 18]);
    expect(lineOf(figureFor('3 - 2', 1, ['3 is 2 and 1'])).stops).toEqual([2, 3]);
    expect(lineOf(figureFor('12 - 2', 10, ['One full frame is 10, and 2 more make 12'])).stops).toEqual([
      10, 12,
    ]);
  });

  it('follow a step that a clause comes after', () => {
    expect(lineOf(figureFor('1 + 2', 3, ['1 is odd', '1 + 2 = 3, which is odd'])).stops).toEqual([1, 3]);
  });

  it('are left out beside steps that go a way of their own', () => {
    expect(figureFor('47 + 38', 85, ['40 + 30 = 70', '7 + 8 = 15', '70 + 15 = 85'])).toBeNull();
    expect(figureFor('6 + 6', 12, ['5 + 5 = 10', '1 + 1 = 2', '10 + 2 = 12'])).toBeNull();
  });

  it('ignore steps that are false or decimal', () => {
    expect(lineOf(figureFor('47 + 38', 85, ['47 + 38 = 86'])).stops).toEqual([47, 77, 85]);
    expect(lineOf(figureFor('47 + 38', 85, ['0.47 + 38 = 85', '47 + 3 = 50'])).stops).toEqual([47, 77, 85]);
  });

  it('always land right, with every label telling its jump and every stop written', () => {
    const operand = fc.integer({ min: 1, max: 999 });
    fc.assert(
      fc.property(operand, operand, fc.boolean(), (one, other, adds) => {
        const [a, b] = adds ? [one, other] : [one + other, other];
        fc.pre(a < 1000);
        const value = adds ? a + b : a - b;
        const { figure, jumps, stops } = lineOf(figureFor(`${a} ${adds ? '+' : '-'} ${b}`, value));
        const moved = jumps.reduce((sum, jump) => sum + Number(jump.label.replace('\u2212', '-')), 0);
        const [start, end] = [stops[0] ?? 0, stops.at(-1) ?? 0];
        expect(start + moved).toBe(end);
        if (adds) expect([Math.max(a, b), a + b]).toEqual([start, end]);
        else
          expect([
            [a, value],
            [b, a],
          ]).toContainEqual([start, end]);
        jumps.forEach((jump, index) => {
          expect(jump.from).toBe(stops[index]);
          expect(jump.to - jump.from).toBe(Number(jump.label.replace('\u2212', '-')));
        });
        expect(new Set(figure.labels)).toEqual(new Set(stops));
        expect(drawFigure(figure).svg).not.toContain('NaN');
      }),
    );
  });
});

describe('products', () => {
  it('are arrays, split where a fact is known', () => {
    expect(figureFor('7 * 8', 56)).toEqual({ kind: 'array', rows: 7, columns: 8, splitAfterColumn: 5 });
    expect(figureFor('4 * 3', 12)).toEqual({ kind: 'array', rows: 4, columns: 3 });
    expect(figureFor('6 * 12', 72)).toEqual({ kind: 'array', rows: 6, columns: 12, splitAfterColumn: 10 });
    expect(figureFor('4 * 2', 8, ['2 × 4 = 8'])).toEqual({ kind: 'array', rows: 2, columns: 4 });
    expect(figureFor('6 * 2', 12, ['6 + 6 = 12'])).toEqual({ kind: 'array', rows: 2, columns: 6 });
    expect(figureFor('3 * 6', 18, ['2 × 6 = 12', '12 + 6 = 18'])).toEqual({
      kind: 'array',
      rows: 6,
      columns: 3,
      splitAfterColumn: 2,
    });
    expect(figureFor('7 * 9', 63, ['10 × 7 = 70', '70 \u2212 7 = 63'])).toEqual({
      kind: 'array',
      rows: 7,
      columns: 9,
    });
  });

  it('split as the worked steps do, turning the array if need be', () => {
    expect(figureFor('7 * 8', 56, ['5 × 8 = 40', '2 × 8 = 16', '40 + 16 = 56'])).toEqual({
      kind: 'array',
      rows: 8,
      columns: 7,
      splitAfterColumn: 5,
    });
    expect(figureFor('6 * 4', 24, ['6 × 2 = 12', '12 + 12 = 24'])).toEqual({
      kind: 'array',
      rows: 6,
      columns: 4,
      splitAfterColumn: 2,
    });
  });

  it('double and halve larger numbers as a bar in two', () => {
    expect(figureFor('2 * 47', 94)).toEqual({ kind: 'bar-model', whole: '94', parts: ['47', '47'] });
    expect(figureFor('86 / 2', 43)).toEqual({ kind: 'bar-model', whole: '86', parts: ['43', '43'] });
  });
});

describe('groups of two', () => {
  const inTwos = { kind: 'bar-model', whole: '14', parts: ['2', '2', '2', '2', '2', '2', '2'] };

  it('are a bar in twos where the steps count twos', () => {
    expect(figureFor('14 / 2', 7, ['2 + 2 + 2 + 2 + 2 + 2 + 2 = 14', '14 ÷ 2 = 7'])).toEqual(inTwos);
    expect(figureFor('14 / 2', 7, ['7 × 2 = 14', '14 ÷ 2 = 7'])).toEqual(inTwos);
  });

  it('stay a bar in two where the steps share', () => {
    const inTwo = { kind: 'bar-model', whole: '14', parts: ['7', '7'] };
    expect(figureFor('14 / 2', 7, ['2 × 7 = 14', '14 ÷ 2 = 7'])).toEqual(inTwo);
    expect(figureFor('14 / 2', 7, ['7 + 7 = 14'])).toEqual(inTwo);
  });
});

describe('fractions of a number', () => {
  it('are bars in equal parts with the wanted ones shaded', () => {
    const expected = { kind: 'bar-model', whole: '20', parts: ['5', '5', '5', '5'], shaded: 3 };
    expect(figureFor('3/4 * 20', 15)).toEqual(expected);
    expect(figureFor('(3/4) * 20', 15)).toEqual(expected);
    expect(figureFor('20 * (3/4)', 15)).toEqual(expected);
    expect(figureFor('75/100 * 20', 15)).toEqual(expected);
  });

  it('add up to the whole and to the answer', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 12 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 40 }),
        (parts, top, each) => {
          fc.pre(top <= parts);
          const figure = figureFor(`${top}/${parts} * ${parts * each}`, top * each);
          if (figure?.kind !== 'bar-model') throw new Error('a bar was expected');
          const sizes = figure.parts.map(Number);
          expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(Number(figure.whole));
          expect(sizes.slice(0, figure.shaded).reduce((sum, size) => sum + size, 0)).toBe(top * each);
        },
      ),
    );
  });
});

describe('no drawing', () => {
  it.each([
    ['no expression', null, 4],
    ['a sum of three', '4 + 5 + 6', 15],
    ['a decimal', '4.5 + 2', '13/2'],
    ['a number beyond the line', '123456 + 7', 123463],
    ['nothing to add', '47 + 0', 47],
    ['a result below zero', '5 - 9', -4],
    ['a fraction that does not come out whole', '2/3 * 20', '40/3'],
    ['a division other than halving', '56 / 7', 8],
    ['an unbracketed chain', '20 * 3/4', 15],
    ['a product too large for dots', '13 * 14', 182],
  ])('for %s', (_, expression, value) => {
    expect(figureFor(expression, value)).toBeNull();
  });

  it('for times of day and money, whose numbers are not counted on a line', () => {
    expect(figureFor('465 + 30', 495, [], 'time')).toBeNull();
    expect(figureFor('5 + 3', 8, [], 'money')).toBeNull();
  });

  it('for steps told in money: bare cents, or how many coins, would not show them', () => {
    expect(figureFor('1 + 1', 2, ['50c + 10c = 60c'])).toBeNull();
    expect(figureFor('800 - 760', 40, ['$7.60 + 40c = $8'])).toBeNull();
    expect(figureFor('800 - 760', 40, ['760 + 40 = 800'])).not.toBeNull();
  });

  it('when the expression does not give the answer', () => {
    expect(figureFor('47 + 38', 75)).toBeNull();
  });
});
