// Why a statement is exercised by no skill: reasons by statement, in words that a maths lead can judge.
import type { StandardId } from '../statement.js';

const WRITTEN =
  'A written method on paper; the mental part of it is asked, the layout of the columns is not a warm-up.';
const EXPLAIN = 'It asks for an explanation in the child’s own words, which no short answer can show.';
const HANDS = 'It needs things to handle: real objects, building or measuring, not a short question.';
const DRAWING = 'It asks the child to draw or build; a warm-up can only ask about what is drawn.';
const CARPET = 'Talk on the carpet with real things; a written question would test reading instead.';

/** The reason by standard and code; a statement is listed here or exercised, never both. */
export const NOT_ASKED: Readonly<Record<StandardId, Readonly<Record<string, string>>>> = {
  ac9: {
    AC9MFSP02: CARPET,
    AC9M2M01: HANDS,
    AC9M6SP01: 'It needs solids to cut, or a model to turn; one still drawing does not show the slices.',
  },
  england: {
    'NC-Y1-measure-1c': HANDS,
    'NC-Y3-shape-1': DRAWING,
    'NC-Y4-shape-4': DRAWING,
    'NC-Y6-fourops-1': WRITTEN,
    'NC-Y6-fourops-2': WRITTEN,
    '1G-2': HANDS,
    '3G-2': DRAWING,
    '4G-1': DRAWING,
    '5G-1': 'It needs a protractor in the hand; naming and adding angles is asked elsewhere.',
    '6G-1': DRAWING,
  },
  ccss: {
    'K.MD.A.1': CARPET,
    '2.NBT.B.9': EXPLAIN,
    '3.NF.A.2a': DRAWING,
    '5.NF.B.5b': EXPLAIN,
    '6.SP.A.1': 'It is about wording a question for a survey, not about working one out.',
  },
};
