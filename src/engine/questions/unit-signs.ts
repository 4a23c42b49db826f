// The signs of units as a country's curriculum writes them. Templates write L and mL; England's classrooms read l and ml.
import type { Locale } from '../numbers/locale.js';
import type { Draft } from './draft.js';
import type { Answer } from './question.js';

/** The litre after a number ("3 L", "? mL"), not the Roman fifty nor the L of a shape. */
const LITRE = /(?<=[\d?][\s\u00a0]m?)L(?![\w-])/g;

/** The draft with the litre written as the locale writes it, in its sentences, answers and figure. */
export function withUnitSigns(draft: Draft, { litreSign }: Locale): Draft {
  if (litreSign === 'L') return draft;
  const spelt = (text: string) => text.replace(LITRE, litreSign);
  const answered = (answer: Answer): Answer => ({ ...answer, text: spelt(answer.text) });
  const { accepts, figure, usesNumber } = draft;
  return {
    ...draft,
    text: spelt(draft.text),
    answer: answered(draft.answer),
    strategy: draft.strategy.map(spelt),
    slips: draft.slips.map((slip) => ({ ...slip, answer: answered(slip.answer) })),
    ...(accepts ? { accepts: accepts.map(spelt) } : {}),
    ...(usesNumber === undefined ? {} : { usesNumber: spelt(usesNumber) }),
    ...(figure && 'unit' in figure
      ? { figure: { ...figure, unit: figure.unit.replace(/^(m?)L$/, `$1${litreSign}`) } }
      : {}),
  };
}
