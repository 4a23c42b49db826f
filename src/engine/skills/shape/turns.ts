// Turns, in quarters and in degrees.
import { multiply, rational, toNumber } from '../../numbers/rational.js';
import type { Rational } from '../../numbers/rational.js';
import { wholeAnswer, wordAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { storyName } from '../story.js';
import {
  type Quantity,
  quantity,
  quantityAnswer,
  quantityOn,
  shown,
  sizeOf,
  using,
  wholeOn,
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

const WINDS = ['north', 'east', 'south', 'west'] as const;

function wind(index: number): string {
  return WINDS[((index % 4) + 4) % 4] ?? 'north';
}

function turn(
  quarters: number,
  text: string,
  start: number,
  clockwise: boolean,
  { rng, locale }: TemplateContext,
): Draft {
  const name = storyName(rng);
  const sign = clockwise ? 1 : -1;
  const end = start + sign * quarters;
  const rest = quarters % 4;
  const full = Math.floor(quarters / 4);
  const way = clockwise ? 'clockwise' : locale.id === 'en-US' ? 'counterclockwise' : 'anticlockwise';
  return {
    text: `${name} faces ${wind(start)} and makes ${text} ${way}. Which way does ${name} face now?`,
    answer: wordAnswer(wind(end)),
    expression: null,
    features: {
      size: (rest > 2 ? 0.7 : rest > 1 ? 0.3 : 0) + (full > 2 ? 1 : 0),
      extraSteps: (full > 0 ? 1 : 0) + (full > 3 ? 1 : 0),
      fewChoices: true,
      adjust: clockwise ? 0.2 : 0.5,
    },
    strategy: [
      ...(text.includes('/')
        ? [
            `${text} ${full > 0 ? 'are' : 'is'} ${quarters === 1 ? '1 quarter turn' : `${quarters} quarter turns`}`,
          ]
        : []),
      ...(full > 0
        ? [
            `${quarters} = ${full} × 4${rest > 0 ? ` + ${rest}` : ''}: every 4 quarter turns end facing ${wind(start)} again`,
          ]
        : []),
      rest === 0
        ? `No quarter turns remain: still ${wind(end)}`
        : `${rest} quarter ${rest === 1 ? 'turn' : 'turns'} ${way}: ${Array.from({ length: rest + 1 }, (_, i) => wind(start + sign * i)).join(', ')}`,
    ],
    slips: [
      { misconception: 'shape.other-direction', answer: wordAnswer(wind(start - sign * quarters)) },
      // One quarter turn too few leaves nothing of a quarter turn; then it is one too many.
      {
        misconception: 'shape.half-turn-quarter',
        answer: wordAnswer(wind(quarters === 1 ? end + sign : end - sign)),
      },
    ],
  };
}

function rightAngles(quarters: number, text: string, { locale }: TemplateContext): Draft {
  const full = Math.floor(quarters / 4);
  const rest = quarters % 4;
  return {
    // "a full turn" makes them; "1 1/2 full turns" make them.
    text: `How many right angles ${quarters > 4 ? 'do' : 'does'} ${text} make?`,
    answer: wholeAnswer(quarters, locale),
    expression: `4 * (${quarters} / 4)`,
    features: { size: quarters > 4 ? 0.7 : 0, drawn: true },
    strategy: [
      'A quarter turn is one right angle, a full turn is four',
      ...(full > 1 ? [`${full} × 4 = ${4 * full}`] : []),
      ...(full > 0 && rest > 0 ? [`${4 * full} + ${rest} = ${quarters}`] : []),
      ...(quarters <= 4 ? [`So that makes ${quarters}`] : []),
    ],
    slips: [
      { misconception: 'shape.half-turn-quarter', answer: wholeAnswer(quarters + 1, locale) },
      // One quarter turn too few leaves nothing of a quarter turn, and nobody answers with no angle at all.
      ...(quarters > 1
        ? [{ misconception: 'shape.half-turn-quarter' as const, answer: wholeAnswer(quarters - 1, locale) }]
        : []),
    ],
  };
}

const TURN_WORDS: Readonly<Record<number, string>> = {
  1: 'a quarter turn',
  2: 'a half turn',
  3: 'a three-quarter turn',
  4: 'a full turn',
};

/** "3/4 of a full turn", "0.7 of a right angle", "2 full turns", "1 right angle". */
function turnText(part: Quantity, unit: 'turn' | 'right-angle'): string {
  const one = unit === 'turn' ? 'full turn' : 'right angle';
  if (toNumber(part.value) < 1) return `${part.text} of a ${one}`;
  return `${part.text} ${one}${part.text === '1' ? '' : 's'}`;
}

function turnDegrees(part: Quantity, unit: 'turn' | 'right-angle', { locale }: TemplateContext): Draft {
  const full = unit === 'turn' ? 360 : 90;
  const total = multiply(part.value, rational(full));
  const { n, d } = part.value;
  const isFraction = part.style === 'fraction' && d > 1;
  const one = rational(full, d);
  const [wholes, rest] = [Math.floor(n / d), n % d];
  const over = multiply(one, rational(rest));
  const answer = (value: Rational) => quantityAnswer(value, 'decimal', locale, '°');
  const named = turnText(part, unit);
  return {
    text: `How many degrees are in ${named}?`,
    answer: answer(total),
    expression: `${part.expression} * ${full}`,
    features: {
      size: (d === 1 ? sizeOf(n) * 0.6 : d > 4 ? 1 : 0.3) + (n > d && d > 1 ? 0.7 : 0),
      extraSteps: isFraction && n > 1 ? 1 : 0,
      unlike: !isFraction && d > 1,
      adjust: d === 2 && n === 1 ? -0.6 : -0.3,
    },
    strategy: [
      unit === 'turn' ? 'A full turn has 360°' : 'A right angle has 90°',
      ...(isFraction
        ? [
            ...(wholes > 0 ? [`${wholes} × ${full} = ${shown(rational(wholes * full), locale)}`] : []),
            `${full} ÷ ${d} = ${shown(one, locale)}`,
            ...(rest > 1 ? [`${rest} × ${shown(one, locale)} = ${shown(over, locale)}`] : []),
            ...(wholes > 0
              ? [
                  `${shown(rational(wholes * full), locale)} + ${shown(over, locale)} = ${shown(total, locale)}`,
                ]
              : []),
          ]
        : [`${part.text} × ${full} = ${shown(total, locale)}`]),
    ],
    slips: [
      ...(isFraction && n > 1 ? [{ misconception: 'part.one-only' as const, answer: answer(one) }] : []),
      ...(unit === 'turn' && (100 * n) % d === 0
        ? [{ misconception: 'shape.full-turn-hundred' as const, answer: answer(rational(100 * n, d)) }]
        : []),
      { misconception: 'shape.wrong-total', answer: answer(multiply(part.value, rational(180))) },
    ],
  };
}

export const TURN_SKILLS: readonly Skill[] = [
  {
    id: 'shape.turn',
    title: 'Follow quarter, half and three-quarter turns',
    year: 3,
    fluentYear: 4,
    strand: 'shape',
    prerequisites: ['shape.name'],
    codes: { ac9: ['AC9M2M05', 'AC9M3M05'], england: ['NC-Y2-position-2', 'NC-Y3-shape-3'], ccss: [] },
    templates: [
      {
        id: 'winds',
        ask: (context) => {
          const quarters = context.rng.int(1, 3);
          return turn(
            quarters,
            TURN_WORDS[quarters] ?? 'a quarter turn',
            context.rng.int(0, 3),
            context.rng.chance(0.7),
            context,
          );
        },
        dayKinds: ['whole', 'fraction'],
        askOn: (day, context) => {
          const { rng } = context;
          const quarters = wholeOn(day, 1, 40);
          if (quarters !== null) {
            const text = quarters === 1 ? '1 quarter turn' : `${quarters} quarter turns`;
            return using(turn(quarters, text, rng.int(0, 3), rng.chance(0.7), context), `makes ${text}`);
          }
          const parts =
            day.kind === 'fraction' && 4 % day.value.d === 0 ? (day.value.n * 4) / day.value.d : null;
          if (parts === null || parts > 12) return null;
          const text = parts < 4 ? `${day.text} of a full turn` : `${day.text} full turns`;
          return using(turn(parts, text, rng.int(0, 3), rng.chance(0.7), context), `makes ${text}`);
        },
      },
      {
        id: 'right-angles',
        ask: (context) => {
          const quarters = context.rng.int(1, 4);
          return rightAngles(quarters, TURN_WORDS[quarters] ?? 'a full turn', context);
        },
        dayKinds: ['fraction'],
        askOn: (day, context) => {
          if (4 % day.value.d !== 0 || day.kind !== 'fraction') return null;
          const quarters = (day.value.n * 4) / day.value.d;
          if (quarters > 40) return null;
          const text = quarters < 4 ? `${day.text} of a full turn` : `${day.text} full turns`;
          return using(rightAngles(quarters, text, context), `makes ${text}`);
        },
      },
    ],
  },
  {
    id: 'shape.turn.degrees',
    title: 'Change turns to degrees',
    year: 5,
    fluentYear: 6,
    strand: 'shape',
    prerequisites: ['shape.turn', 'shape.angle.name', 'frac.nonunit-of'],
    codes: { ac9: ['AC9M5M04'], england: ['NC-Y5-shape-4a', 'NC-Y5-shape-4c'], ccss: ['4.MD.C.5a'] },
    templates: [
      {
        id: 'degrees',
        ask: (context) => {
          const bottom = context.rng.pick([2, 3, 4, 6, 8]);
          return turnDegrees(
            quantity(rational(context.rng.int(1, bottom - 1), bottom), context.locale, 'fraction'),
            'turn',
            context,
          );
        },
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const part = quantityOn(day, context.locale, 0.05, 12, 1);
          if (part === null) return null;
          const units = (['turn', 'right-angle'] as const).filter(
            (unit) => (unit === 'turn' ? 360 : 90) % part.value.d === 0,
          );
          if (units.length === 0) return null;
          const unit = context.rng.pick(units);
          return using(turnDegrees(part, unit, context), `changes ${turnText(part, unit)} to degrees`);
        },
      },
    ],
  },
];
