// Measuring scales to be read: what they say; one file a form draws them.
import type { Locale } from '../../numbers/locale.js';
import { labelledValues, markedValues, tellPlace } from '../reading.js';
import type { Mark, Sketch } from '../svg.js';
import { countOf, listOf, numberText, withUnit } from '../words.js';
import { drawDial } from './scale/dial.js';
import { drawJug } from './scale/jug.js';
import type { ScaleReading, ScaleSpec } from './scale/scale-reading.js';
import { drawSpringBalance } from './scale/spring-balance.js';
import { drawThermometer } from './scale/thermometer.js';

interface Form {
  readonly opening: string;
  readonly shows: string;
  readonly draw: (reading: ScaleReading) => Mark[];
}

const FORMS: Readonly<Record<ScaleSpec['form'], Form>> = {
  dial: { opening: 'A round measuring dial', shows: 'The pointer is at', draw: drawDial },
  jug: { opening: 'A measuring jug', shows: 'The liquid reaches up to', draw: drawJug },
  thermometer: { opening: 'A thermometer', shows: 'The dark column reaches up to', draw: drawThermometer },
  balance: {
    opening: 'A spring balance with a bag on its hook',
    shows: 'The pointer is at',
    draw: drawSpringBalance,
  },
};

export function drawScale(spec: ScaleSpec, locale: Locale): Sketch {
  const name = (value: number) => numberText(value, locale);
  const marked = markedValues(spec);
  const labelled = labelledValues(spec);
  const share = (value: number) => (value - spec.from) / (spec.to - spec.from);
  const { opening, shows, draw } = FORMS[spec.form];
  const written = `${labelled.length === 1 ? 'the number' : 'the numbers'} ${listOf(labelled.map(name))} ${labelled.length === 1 ? 'is' : 'are'} written`;
  const range = `${name(spec.from)} to ${withUnit(name(spec.to), spec.unit)}`;
  const alt =
    `${opening}. Its scale runs from ${range} in ${countOf(marked.length - 1, 'equal step')}; ${written}. ` +
    `${shows} ${tellPlace(spec.value, spec, name)}.`;
  return { marks: draw({ spec, marked, labelled, name, share }), alt };
}
