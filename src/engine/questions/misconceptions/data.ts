// Tallies, tables, graphs, averages and chance.
import type { Misconception } from '../misconceptions.js';
import { COMMON } from './common.js';

const CENTRE = 'Ismail & Chan 2015 (measures of central tendency, an error analysis)';

export const DATA_MISCONCEPTIONS = {
  'data.bundle-of-four': {
    does: 'counts a tally bundle as four',
    help: 'The stroke across counts too: a full bundle is a full hand, five.',
    source: COMMON,
  },
  'data.bundle-of-ten': {
    does: 'counts a tally bundle as ten',
    help: 'The stroke across counts too: a full bundle is a full hand, five.',
    source: COMMON,
  },
  'data.key-ignored': {
    does: 'counts every picture as one and overlooks the key',
    help: 'Read the key first and count in its steps.',
    source: COMMON,
  },
  'data.other-row': {
    does: 'names the smaller group, or the one that was said last',
    help: 'Line both groups up one to one and see which row goes on longer.',
    source: COMMON,
  },
  'data.other-bar': {
    does: 'reads the column beside the one that was asked for',
    help: 'Put a finger on the label first, then go up the column and across.',
    source: COMMON,
  },
  'data.added-not-compared': {
    does: 'adds the two numbers where “how many more” asks for the difference',
    help: 'Put the two rows side by side and cover what they share.',
    source: COMMON,
  },
  'data.larger-given': {
    does: 'gives the larger number instead of how much larger it is',
    help: 'Put the two rows side by side and cover what they share.',
    source: COMMON,
  },
  'data.half-picture': {
    does: 'counts half a picture as a whole one or not at all',
    help: 'Ask what half a picture stands for and write it beside the key.',
    source: COMMON,
  },
  'data.largest-given': {
    does: 'gives the largest number in the list',
    help: 'Say what the word asks for before looking at the list: mode is the one that comes most often.',
    source: COMMON,
  },
  'data.mean-gap-given': {
    does: 'gives how far the known number lies from the mean',
    help: 'Draw both numbers as towers and level them: what one lacks, the other has above the mean.',
    source: COMMON,
  },
  'data.one-left-out': {
    does: 'leaves one group out of the total',
    help: 'Tick off each group as it is added.',
    source: COMMON,
  },
  'data.mean-not-shared': {
    does: 'adds the numbers and does not share the total out',
    help: 'The mean is the fair share: build towers and level them.',
    source: CENTRE,
  },
  'data.mean-halved': {
    does: 'always divides by two, however many numbers there are',
    help: 'Count the numbers first: as many as there are, into so many equal shares.',
    source: CENTRE,
  },
  'data.middle-unsorted': {
    does: 'takes the middle number without putting the list in order',
    help: 'Write the numbers from smallest to largest before looking for the middle.',
    source: 'Australian Association of Mathematics Teachers, teaching pages on averages; Ismail & Chan 2015',
  },
  'data.ends-unsorted': {
    does: 'takes the first and the last number in the list as they stand',
    help: 'Find the largest and the smallest first, wherever they are in the list.',
    source: CENTRE,
  },
  'data.measures-mixed-up': {
    does: 'mixes up mean, median, mode and range',
    help: 'Make one card a word with a picture: towers made equal, the middle of a line, the most popular, from end to end.',
    source: CENTRE,
  },
  'data.how-often-given': {
    does: 'gives how often the most frequent number appears instead of the number',
    help: 'Ask: which one is it? Then: how often?',
    source: CENTRE,
  },
  'data.part-to-part': {
    does: 'compares the wanted outcomes with the others instead of with all of them',
    help: 'Count all the outcomes first: they make the bottom number.',
    source: 'Bryant & Nunes 2012, review of children’s understanding of probability; common practice',
  },
  'data.other-event': {
    does: 'gives the chance that it does happen when asked for the chance that it does not, or the other way around',
    help: 'The two chances together make 1: draw them as one bar.',
    source: COMMON,
  },
  'data.whole-is-ten': {
    does: 'fills a decimal chance up to 10 instead of 1',
    help: 'A certain event has the chance 1: mark 0 and 1 on a line and place the decimal between them.',
    source: COMMON,
  },
  'data.half-or-half': {
    does: 'thinks that when there are two possibilities each has an even chance',
    help: 'Shade the parts of the spinner and compare their sizes.',
    source: 'the false assumption of equal likelihood, as in Peard (MERGA), Problems with probability',
  },
  'data.certain-likely': {
    does: 'uses one chance word for another that is close',
    help: 'Line the words up from impossible to certain and place everyday events along the line.',
    source:
      'Fischbein, Sainati Nello & Sciolis Marino 1991 (certain events are harder to grasp than possible ones)',
  },
  'graph.other-point': {
    does: 'reads the point, slice or cell beside the one asked for',
    help: 'Go from the label with a finger, straight up or along.',
    source: COMMON,
  },
  'graph.value-not-change': {
    does: 'gives one of the two values instead of how far apart they are',
    help: 'Read both values, write them down, then compare.',
    source: COMMON,
  },
  'graph.lowest-for-highest': {
    does: 'goes to the lowest point instead of the highest, or the other way around',
    help: 'Slide a ruler down the graph and see which point it meets first.',
    source: COMMON,
  },
  'table.other-line': {
    does: 'reads another row or column than the one asked for',
    help: 'Lay a strip of paper along the row and put a finger on the heading.',
    source: COMMON,
  },
  'table.one-cell': {
    does: 'gives one number of the table instead of adding up all that are asked for',
    help: 'Put a counter on each cell that belongs to the question, then add.',
    source: COMMON,
  },
  'table.headings-counted': {
    does: 'counts the headings of the table instead of adding what stands below them',
    help: 'Ask what one cell tells: how many ribbons of that length are there?',
    source: COMMON,
  },
  'pie.slices-alike': {
    does: 'shares the whole out equally among the slices, whatever their size',
    help: 'Lay a paper quarter on the slices: are they all as large as one another?',
    source: COMMON,
  },
  'pie.slices-counted': {
    does: 'gives the number of parts instead of what they stand for',
    help: 'Write what the whole circle stands for in the middle, then share it out.',
    source: COMMON,
  },
} as const satisfies Record<string, Misconception>;
