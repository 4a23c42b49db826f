// Why a statement is exercised by no skill: reasons by statement, in words that a maths lead can judge.
import type { StandardId } from '../statement.js';

const EXPLAIN = 'It asks for an explanation in the child’s own words, which no short answer can show.';
const HANDS = 'It needs things to handle: real objects, building or measuring, not a short question.';

/** The reason by standard and code; a statement is listed here or exercised, never both. */
export const NOT_ASKED: Readonly<Record<StandardId, Readonly<Record<string, string>>>> = {
  ac9: {},
  england: {
    '1G-2': HANDS,
  },
  ccss: {
    '2.NBT.B.9': EXPLAIN,
    '6.SP.A.1': 'It is about wording a question for a survey, not about working one out.',
  },
};
