// The proof of a chain, from its strips alone: which arrows there are, and how many runs they allow.
import type { Locale } from '../../numbers/locale.js';
import { foldText } from '../../questions/equivalence.js';
import type { Answer } from '../../questions/question.js';
import { answerMarks } from '../sameness.js';
import type { ChainCard, ChainProof, SlipLanding } from './chain.js';
import { countFullRuns } from './full-runs.js';

/**
 * What holds for these strips, in solution order (2 to 20). Arrows lead from a question to every strip whose answer could
 * be taken for the right answer, an accepted form of it or one of its slips (sameness.ts). A chain may be given out when
 * `fullRuns` is 1 and each question's right answer stands on the next strip only, which `level` other than "open" says.
 */
export function proveChain(cards: readonly ChainCard[], locale: Locale): ChainProof {
  const marks = cards.map(({ answer }) => (answer ? answerMarks(answer, locale) : []));
  const stripsOf = new Map<string, number[]>();
  marks.forEach((own, at) => {
    for (const mark of own) {
      const strips = stripsOf.get(mark);
      if (strips) strips.push(at);
      else stripsOf.set(mark, [at]);
    }
  });
  const stripsWith = (wanted: readonly string[]) => [
    ...new Set(wanted.flatMap((mark) => stripsOf.get(mark) ?? [])),
  ];

  const landings: SlipLanding[] = [];
  let slips = 0;
  let shownAtOnce = 0;
  let isUnambiguous = true;
  const arrows = cards.map(({ question }, from) => {
    if (!question) return 0;
    const forms = [question.answer, ...question.accepts.slice(1).map((text) => ({ text, value: null }))];
    const right = stripsWith(forms.flatMap((form) => answerMarks(form, locale)));
    if (right.length !== 1 || right[0] !== from + 1) isUnambiguous = false;
    let bits = right.reduce((sum, to) => sum | (1 << to), 0);
    for (const slip of question.slips) {
      slips++;
      const strips = stripsWith(answerMarks(slip, locale));
      for (const to of strips) {
        bits |= 1 << to;
        landings.push({ from, misconception: slip.misconception, to });
      }
      if (strips.every((to) => to <= from)) shownAtOnce++;
    }
    return bits;
  });
  const fullRuns = countFullRuns(arrows);
  const isSingle = isUnambiguous && fullRuns === 1;
  return {
    fullRuns,
    slips,
    shownAtOnce,
    level: !isSingle ? 'open' : shownAtOnce === slips ? 'at once' : 'single run',
    landings,
    foundByForm: countFoundByForm(cards.flatMap(({ answer }) => answer ?? [])),
  };
}

/** What an answer looks like apart from its size: "#", "#.#", "#/#", "$#.#", "#:#", "# cm"; any word is "word". */
export function answerForm(answer: Answer): string {
  const text = foldText(answer.text);
  if (answer.value === null && /^[^\d]+$/.test(text)) return 'word';
  return text.replace(/\d[\d ,]*/g, '#').replace(/ /g, '');
}

/** How many answers are the only one of their form; whole numbers are never counted, since any question may have one. */
export function countFoundByForm(answers: readonly Answer[]): number {
  const counts = new Map<string, number>();
  for (const answer of answers) {
    const form = answerForm(answer);
    counts.set(form, (counts.get(form) ?? 0) + 1);
  }
  return [...counts].filter(([form, count]) => count === 1 && form !== '#').length;
}
