// Reading rulers, tapes and scales.
import type { Locale } from '../../numbers/locale.js';
import { add, rational, subtract, toNumber } from '../../numbers/rational.js';
import { unitAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { scaleReadByOnes } from '../../questions/slips/measuring.js';
import {
  borrowsIn,
  type Quantity,
  quantity,
  quantityAnswer,
  quantityOn,
  shown,
  sizeOf,
  unitIn,
  using,
  wholeOn,
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

// Only things that can be 2 to 9 cm long.
const OBJECTS = ['pencil', 'crayon', 'key', 'leaf', 'stick', 'ribbon'];

function readRuler(from: number, to: number, { rng, locale }: TemplateContext): Draft {
  const object = rng.pick(OBJECTS);
  const length = to - from;
  return {
    text:
      from === 0
        ? `How many centimetres long is the ${object} on the ruler?`.replace(
            'centimetres',
            `centi${locale.spelling.metre}s`,
          )
        : `The ${object} lies on the ruler from ${from}\u00a0cm to ${to}\u00a0cm. How long is it?`,
    answer: unitAnswer(length, 'cm', locale),
    expression: `${to} - ${from}`,
    features: {
      drawn: true,
      size: from === 0 ? 0 : 0.5,
      extraSteps: from === 0 ? 0 : 1,
      adjust: from === 0 ? -0.6 : -0.2,
    },
    strategy: from === 0 ? ['It starts at 0, so read the mark at its end'] : [`${to} − ${from} = ${length}`],
    slips: [
      ...(from > 0
        ? [{ misconception: 'meas.end-read' as const, answer: unitAnswer(to, 'cm', locale) }]
        : []),
      { misconception: 'meas.marks-counted', answer: unitAnswer(length + 1, 'cm', locale) },
      ...(from === 0 && to > 1
        ? [{ misconception: 'shape.one-short' as const, answer: unitAnswer(length - 1, 'cm', locale) }]
        : []),
    ],
    figure: { kind: 'ruler', lengthCm: Math.max(12, to + 2), objectFrom: from, objectTo: to, object },
  };
}

/** Nothing shorter is held to a tape. */
const SHORTEST_CM = 3;

function tapeLength(from: Quantity, to: Quantity, { rng, locale }: TemplateContext): Draft {
  const object = rng.pick(['ribbon', 'stick', 'string', 'paper strip', 'straw']);
  const length = subtract(to.value, from.value);
  const wholes = from.value.d === 1 && to.value.d === 1;
  return {
    text: `On a tape measure, a ${object} goes from ${from.text}\u00a0cm to ${to.text}\u00a0cm. How long is it?`,
    answer: quantityAnswer(length, from.style, locale, 'cm'),
    expression: `${to.expression} - ${from.expression}`,
    features: {
      size: sizeOf(toNumber(to.value)) * 0.6,
      carries: wholes ? borrowsIn(to.value.n, from.value.n) : 1,
      unlike: !wholes,
    },
    strategy: [`${to.text} − ${from.text} = ${shown(length, locale, from.style)}`],
    slips: [
      { misconception: 'meas.end-read', answer: quantityAnswer(to.value, from.style, locale, 'cm') },
      {
        misconception: 'meas.added-not-taken',
        answer: quantityAnswer(add(to.value, from.value), from.style, locale, 'cm'),
      },
    ],
  };
}

interface ScaleKind {
  readonly form: 'dial' | 'jug' | 'thermometer';
  readonly to: number;
  readonly step: number;
  readonly labelEvery: number;
  readonly unit: string;
  readonly asks: string;
}

const SCALES: readonly ScaleKind[] = [
  { form: 'jug', to: 1000, step: 50, labelEvery: 100, unit: 'mL', asks: 'How much water is in the jug?' },
  { form: 'jug', to: 500, step: 25, labelEvery: 100, unit: 'mL', asks: 'How much water is in the jug?' },
  { form: 'jug', to: 500, step: 20, labelEvery: 100, unit: 'mL', asks: 'How much water is in the jug?' },
  {
    form: 'dial',
    to: 1000,
    step: 50,
    labelEvery: 200,
    unit: 'g',
    asks: 'What mass do the kitchen scales show?',
  },
  { form: 'dial', to: 100, step: 5, labelEvery: 10, unit: 'kg', asks: 'What mass do the scales show?' },
  { form: 'dial', to: 50, step: 2, labelEvery: 10, unit: 'kg', asks: 'What mass do the scales show?' },
  {
    form: 'thermometer',
    to: 40,
    step: 2,
    labelEvery: 10,
    unit: '°C',
    asks: 'What temperature does the thermometer show?',
  },
  {
    form: 'thermometer',
    to: 50,
    step: 5,
    labelEvery: 10,
    unit: '°C',
    asks: 'What temperature does the thermometer show?',
  },
];

/** American classrooms read a scale and a measuring cup where the others read scales and a jug. */
function askedIn(text: string, locale: Locale): string {
  return locale.id === 'en-US'
    ? text
        .replace(/do (the (?:kitchen )?)scales show/, 'does $1scale show')
        .replace('the jug', 'the measuring cup')
    : text;
}

/** Readings between two labels; one on a label would only have to be copied. */
function readingsOf({ to, step, labelEvery }: ScaleKind): number[] {
  return Array.from({ length: to / step }, (_, i) => i * step).filter((value) => value % labelEvery !== 0);
}

function readScale(kind: ScaleKind, value: number, { locale }: TemplateContext): Draft {
  const unit = unitIn(kind.unit, locale);
  const inUnit = (count: number) => quantityAnswer(rational(count), 'decimal', locale, unit);
  const label = Math.floor(value / kind.labelEvery) * kind.labelEvery;
  const marks = (value - label) / kind.step;
  const spaces = kind.labelEvery / kind.step;
  return {
    text: askedIn(kind.asks, locale),
    answer: inUnit(value),
    expression: `${label} + ${marks} * ${kind.step}`,
    features: {
      drawn: true,
      size: kind.step % 10 === 0 || kind.step === 5 ? 0.5 : 1.2,
      adjust: -0.2,
    },
    strategy: [
      `${spaces} spaces from label to label: ${kind.labelEvery} ÷ ${spaces} = ${kind.step}`,
      `${label} + ${marks} × ${kind.step} = ${value}`,
    ],
    slips: [
      {
        misconception: 'meas.scale-by-ones',
        answer: inUnit(scaleReadByOnes(0, kind.step, kind.labelEvery, value)),
      },
      { misconception: 'meas.label-below', answer: inUnit(label) },
    ],
    figure: {
      kind: 'scale',
      form: kind.form,
      from: 0,
      to: kind.to,
      step: kind.step,
      labelEvery: kind.labelEvery,
      value,
      unit,
    },
  };
}

export const SCALE_SKILLS: readonly Skill[] = [
  {
    id: 'meas.ruler',
    title: 'Read a ruler',
    year: 2,
    fluentYear: 3,
    strand: 'measures',
    prerequisites: ['meas.compare'],
    codes: {
      ac9: ['AC9M1M02', 'AC9M3M02'],
      england: ['NC-Y2-measure-1', 'NC-Y3-measure-1'],
      ccss: ['1.MD.A.2', '2.MD.A.4'],
    },
    templates: [
      {
        id: 'ruler',
        ask: (context) => {
          const from = context.rng.pick([0, 0, 1, 2, 3]);
          return readRuler(from, from + context.rng.int(3, 9), context);
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const from = wholeOn(day, 1, 9);
          return from === null
            ? null
            : using(
                readRuler(from, Math.min(15, from + context.rng.int(2, 6)), context),
                `measures from the ${from}\u00a0cm mark`,
              );
        },
      },
    ],
  },
  {
    id: 'meas.tape',
    title: 'Find a length from two marks on a tape',
    year: 3,
    fluentYear: 4,
    strand: 'measures',
    prerequisites: ['meas.ruler', 'sub.2d2d'],
    codes: { ac9: ['AC9M3M02', 'AC9M4M01'], england: ['NC-Y3-measure-1'], ccss: ['2.MD.A.4', '2.MD.B.6'] },
    templates: [
      {
        id: 'tape',
        ask: (context) => {
          const from = context.rng.int(5, 60);
          return tapeLength(
            quantity(from, context.locale),
            quantity(from + context.rng.int(8, 38), context.locale),
            context,
          );
        },
        dayKinds: ['whole', 'decimal'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const from = quantityOn(day, locale, 2, 400, 1);
          if (from === null) return null;
          const whole = Math.floor(toNumber(from.value));
          const near = rng.chance(0.5)
            ? whole + rng.int(3, 30)
            : (Math.floor(whole / 10) + rng.int(1, 4)) * 10;
          // No stick is a millimetre long.
          const end = near - toNumber(from.value) < SHORTEST_CM ? near + 10 : near;
          return using(
            tapeLength(from, quantity(end, locale), context),
            `measures from the ${day.text}\u00a0cm mark`,
          );
        },
      },
    ],
  },
  {
    id: 'meas.scale',
    title: 'Read a scale between its labels',
    year: 4,
    fluentYear: 5,
    strand: 'measures',
    prerequisites: ['meas.ruler'],
    codes: {
      ac9: ['AC9M3M02', 'AC9M4M01'],
      england: ['NC-Y2-measure-1', 'NC-Y3-measure-1'],
      ccss: ['3.MD.A.2'],
    },
    templates: [
      {
        id: 'scale',
        ask: (context) => {
          const kind = context.rng.pick(SCALES);
          return readScale(kind, context.rng.pick(readingsOf(kind)), context);
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const value = wholeOn(day, 1, 1000);
          const kinds = SCALES.filter((kind) => value !== null && readingsOf(kind).includes(value));
          if (value === null || kinds.length === 0) return null;
          return using(readScale(context.rng.pick(kinds), value, context), `reads ${day.text} on a scale`);
        },
      },
    ],
  },
];
