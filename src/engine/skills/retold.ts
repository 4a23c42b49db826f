// A second form for skills whose templates ask for a bare sum: the same sum as a one-sentence story. Steps, wrong answers
// and expression stay those of the sum, since they are about its numbers.
import type { Draft, Template, TemplateContext } from '../questions/draft.js';
import type { Answer } from '../questions/question.js';
import { storyName } from './story.js';

/** The sum in a story, or null where no sensible story has these numbers. */
export type Teller = (sum: string, context: TemplateContext, answer: Answer) => string | null;

const TRIES = 200;

/** The templates, and the first of them told by `tell`. A story's sum falls under the template's own rules for numbers. */
export function withStory(
  tell: Teller,
  [first, ...others]: readonly [Template, ...Template[]],
): [Template, ...Template[]] {
  return [first, ...others, retold(first, tell)];
}

/** Beads, seats and people come whole, in wrong answers too; kilograms and metres do not. */
const isCounted = (story: string) => /\bHow many (?!kilogram|met(?:re|er))/.test(story);
const isWholeValue = ({ value }: Answer) => value === null || !value.includes('/');

function retold(template: Template, tell: Teller): Template {
  const told = (draft: Draft | null, context: TemplateContext): Draft | null => {
    const text = draft === null ? null : tell(draft.text, context, draft.answer);
    return draft === null || text === null
      ? null
      : {
          ...draft,
          text,
          slips: isCounted(text) ? draft.slips.filter(({ answer }) => isWholeValue(answer)) : draft.slips,
          features: { ...draft.features, story: true },
        };
  };
  const { dayKinds, askOn } = template;
  const id = `${template.id}.story`;
  return {
    id,
    ask: (context) => {
      for (let i = 0; i < TRIES; i++) {
        const draft = told(template.ask(context), context);
        if (draft !== null) return draft;
      }
      throw new Error(`template ${id} found no sum that makes a story`);
    },
    ...(dayKinds && askOn ? { dayKinds, askOn: (day, context) => told(askOn(day, context), context) } : {}),
  };
}

/** The numbers around the signs of a bare sum. */
const partsOf = (text: string) => text.split(/ [+−×÷] | of /);
const isWhole = (text: string) => /^\d[\d\u00a0,]*$/.test(text) && !['0', '1'].includes(text);
/** "$4.85" or, below a dollar or a pound, "60c", "60p" or "60¢". */
const isMoney = (text: string) => /^[$£]|[cp¢]$/.test(text);
const isPart = (text: string) => /^\d+\/\d+$/.test(text);

/** "23 × 19", "$4.85 × 9" and "2.4 × 30". */
export const timesStory: Teller = (text, { rng }) => {
  const [each = '', count = ''] = partsOf(text);
  if (!isWhole(count)) return null;
  if (isMoney(each)) return `${count} tickets cost ${each} each. How much is that?`;
  if (!isWhole(each)) return `${count} bags of rice weigh ${each} kg each. How many kilograms is that?`;
  return rng.pick([
    `${count} boxes hold ${each} pins each. How many pins is that?`,
    `${count} trays hold ${each} seeds each. How many seeds is that?`,
    `${count} jars hold ${each} beads each. How many beads is that?`,
  ]);
};

/** "3 × 9 × 5". */
export const threeFactorsStory: Teller = (text) => {
  const [shelves = '', boxes = '', pens = ''] = partsOf(text);
  return [shelves, boxes, pens].every(isWhole)
    ? `${shelves} shelves each hold ${boxes} boxes of ${pens} pens. How many pens is that?`
    : null;
};

/** "What is 22 × 7 if you round 22 to the nearest ten first?" */
export const roughTimesStory: Teller = (text) => {
  const [, each = '', count = '', end = ''] = /^What is (\S+) × (\S+) (if you round .*)$/.exec(text) ?? [];
  return isWhole(each) && isWhole(count)
    ? `${count} boxes hold ${each} nails each. About how many nails is that ${end}`
    : null;
};

/** "450 ÷ 10" and "217 ÷ 100", with pieces of rope where things would have to be cut. */
export const divideStory: Teller = (text, { locale }, { value }) => {
  const [all = '', count = ''] = partsOf(text);
  if (!isWhole(count) || value === null) return null;
  const [top = 0, bottom = 1] = value.split('/').map(Number);
  if (isMoney(all))
    return top >= bottom ? `${count} tickets at the same price cost ${all} in all. How much is one?` : null;
  if (isWhole(value)) return `${all} beads are shared equally among ${count} bags. How many are in each?`;
  return top > bottom && all !== '1'
    ? `${all} ${locale.spelling.metre}s of rope are cut into ${count} equal pieces. How many ${locale.spelling.metre}s is each?`
    : null;
};

/** "4 + 8 + 6", with as many numbers as there are. */
export const pagesStory: Teller = (text, { rng }) => {
  const parts = partsOf(text);
  return parts.every(isWhole)
    ? `${storyName(rng)} reads ${parts.join(' pages, then ')} pages. How many pages is that?`
    : null;
};

/** "64 + 23 − 21": people who get on and off. */
export const boatStory: Teller = (text) => {
  const [aboard = '', on = '', off = ''] = partsOf(text);
  return [aboard, on, off].every((part) => /^\d{2,3}$/.test(part))
    ? `${aboard} people are on a boat. ${on} get on and ${off} get off. How many are on it now?`
    : null;
};

/** "1/2 + 1/4", as far as both are parts of one wall. */
export const wallStory: Teller = (text, { rng }) => {
  const [first = '', second = ''] = partsOf(text);
  const size = (part: string) => part.split('/').map(Number) as [number, number];
  if (!isPart(first) || !isPart(second)) return null;
  const [[a, b], [c, d]] = [size(first), size(second)];
  return a * d + c * b < b * d
    ? `${storyName(rng)} paints ${first} of a wall, then ${second} of it. What part of the wall is painted?`
    : null;
};

/** "3/4 − 3/8", both parts of one metre. */
export const ribbonStory: Teller = (text, { rng, locale }) => {
  const [first = '', second = ''] = partsOf(text);
  const { metre } = locale.spelling;
  return isPart(first) && isPart(second)
    ? `${storyName(rng)} has ${first} of a ${metre} of ribbon and cuts off ${second} of a ${metre}. What part of a ${metre} is left?`
    : null;
};

/** "2/5 of $11". */
export const spendingStory: Teller = (text, { rng }) => {
  const [part = '', all = ''] = partsOf(text);
  return isPart(part) && isMoney(all)
    ? `${storyName(rng)} has ${all} and spends ${part} of it. How much is that?`
    : null;
};

/** The largest stadiums seat about a hundred thousand. */
const MOST_SEATS = 100_000;

/** "25% of 80". */
export const percentStory: Teller = (text, _, { value }) => {
  const [percent = '', all = ''] = partsOf(text);
  if (!isWhole(all) || value === null || !isWhole(value)) return null;
  return Number(all.replace(/\D/g, '')) <= MOST_SEATS
    ? `${percent} of ${all} seats are taken. How many seats is that?`
    : `${percent} of ${all} people live by the sea. How many people is that?`;
};

/** "A trip takes 55 minutes and ends at 2:05. When did it start?" */
export const agoStory: Teller = (text) => {
  const [, minutes, end] = /takes (.+) and ends at\s(\S+)\. /.exec(text) ?? [];
  return minutes !== undefined && end !== undefined
    ? `It is ${end} now. What time was it ${minutes} ago?`
    : null;
};

/** "What is $17.20 to the nearest dollar?" */
export const priceStory: Teller = (text) =>
  text.replace(
    /^What is (\S+) to/,
    (_, amount: string) => `A ${/[cp¢]$/.test(amount) ? 'pencil' : 'game'} costs ${amount}. What is that to`,
  );
