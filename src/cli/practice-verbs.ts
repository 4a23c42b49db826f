// The verbs for timed practice in a class, with their options and help.
import type { Command } from 'commander';

const json = ['--json', 'print one JSON document'] as const;

/** Adds `practice`. */
export function addPracticeVerbs(program: Command): void {
  const practice = program
    .command('practice')
    .description('timed practice of a class: sheets, counts, levels');
  const verb = (name: string, description: string) =>
    practice
      .command(name)
      .description(description)
      .option('--class <class>', 'id or name; not needed when there is only one')
      .option('--date <date>', 'the day; today when left out');
  const child = ['<child>', 'id or name of the child'] as const;
  verb('show', 'who is on which level, what came of the sheets, who may move on')
    .option(...json)
    .action(async (options) => (await import('./verbs/practice.js')).showPractice(options));
  verb('prepare', 'a sheet for everyone who is here; what was wrong comes first')
    .option(...json)
    .action(async (options) => (await import('./verbs/practice.js')).prepare(options));
  verb('print', 'the day’s sheets, their keys, the folded records or the list of copies')
    .requiredOption('--out <file>', 'the PDF to write')
    .option('--document <name>', 'pupil, key, cover or spares', 'pupil')
    .option('--large-print', 'letters about a third larger')
    .action(async (options) => (await import('./verbs/practice.js')).printPracticeTo(options));
  verb('count', 'record what came of sheets, all rows or none')
    .argument(
      '<file>',
      'CSV with the columns child (or the sheet’s code), done, and where you like circled (4 9), written (4:63), redo (1) and minutes (none without a clock); - for standard input',
    )
    .option(...json)
    .action(async (file, options) => (await import('./verbs/practice.js')).count(file, options));
  verb('uncount', 'take the last count of the child’s sheet back')
    .argument(...child)
    .option(...json)
    .action(async (name, options) => (await import('./verbs/practice.js')).uncount(name, options));
  verb('move', 'put the child on a level from the next sheet on')
    .argument(...child)
    .argument('<level>', 'its place on the ladder, its id or its title')
    .option(...json)
    .action(async (name, level, options) => (await import('./verbs/practice.js')).move(name, level, options));
  verb('move-back', 'take the child’s last move back')
    .argument(...child)
    .option(...json)
    .action(async (name, options) => (await import('./verbs/practice.js')).moveBack(name, options));
  verb('ladder', 'the class’s ladder as JSON, for changing it and giving it back')
    .argument('[file]', 'the ladder to use from now on, as this verb prints it; - for standard input')
    .option('--usual', 'back to the ladder that comes with Afterbell')
    .option(...json)
    .action(async (file, options) => (await import('./verbs/practice.js')).classLadder(file, options));
}
