import { describe, expect, it } from 'vitest';
import { localeOf } from '../numbers/locale.js';
import { type PrintedAnswer, answerMarks, shareMark } from './sameness.js';

const AU = localeOf('en-AU');
const of = (text: string, value: string | null = null): PrintedAnswer => ({ text, value });
const alike = (a: PrintedAnswer, b: PrintedAnswer) => shareMark(answerMarks(a, AU), answerMarks(b, AU));

describe('answers taken for one another', () => {
  it.each([
    [of('0.5', '1/2'), of('1/2', '1/2')],
    [of('50%', '50'), of('1/2', '1/2')],
    [of('50%', '50'), of('50', '50')],
    [of('1 m', '1'), of('100 cm', '100')],
    [of('1 h 25 min', '85'), of('85 min', '85')],
    [of('$0.85', '17/20'), of('85c', '17/20')],
    [of('12 cm', '12'), of('12', '12')],
    [of('7:45', '465'), of('7:45 pm', '1185')],
    [of('7:45', '465'), of('19:45', '1185')],
    [of('quarter to eight'), of('7:45', '465')],
    [of('forty-seven'), of('47', '47')],
    [of('Six-eighths'), of('3/4', '3/4')],
    [of('a square'), of('Square')],
    [of('6/8'), of('3/4', '3/4')],
    [of('1, 2, 3'), of('1 2 3')],
  ])('%j and %j', (a, b) => expect(alike(a, b)).toBe(true));

  it.each([
    [of('12', '12'), of('21', '21')],
    [of('7:45', '465'), of('7:15', '435')],
    [of('1 m', '1'), of('1000 cm', '1000')],
    [of('25%', '25'), of('1/2', '1/2')],
    [of('triangle'), of('square')],
    [of('1 km²', '1'), of('900000 m²', '900000')],
  ])('not %j and %j', (a, b) => expect(alike(a, b)).toBe(false));
});
