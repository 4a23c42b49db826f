// Every verb with its options and help; what a verb does stands in verbs/.
import { Command } from 'commander';
import { addPracticeVerbs } from './practice-verbs.js';
import { addSetVerbs } from './set-verbs.js';

const seed = [
  '--seed <number>',
  'names the result for ever: the same seed and settings give the same output',
  '1',
] as const;
const json = ['--json', 'print one JSON document'] as const;
const locale = ['--locale <id>', 'en-AU, en-NZ, en-GB or en-US', 'en-AU'] as const;

/** The command-line program, ready to parse. */
export function createProgram(): Command {
  const program = new Command('afterbell')
    .description('Daily mental-maths warm-ups: make, print, mark, understand.')
    .exitOverride()
    .configureOutput({
      outputError: (text, write) => write(`afterbell: ${sentenceFrom(text)} See --help.\n`),
    })
    .showSuggestionAfterError(true);

  const make = program.command('make').description('compose an activity');
  make
    .command('board')
    .description('a number-of-the-day board')
    .requiredOption('--number <number>', 'the day’s number: 47, 3.6, $4.85, 3/4')
    .requiredOption('--years <years>', 'school years of the class: 4, 4-5, F-2')
    .option('--own <file>', 'your own questions, before all others; see docs/own-questions.md')
    .option('--side <side>', 'front (easier) or back (harder)', 'front')
    .option('--rungs <count>', 'how many questions, 6 to 16', '12')
    .option('--count <count>', 'make several, each with a seed of its own')
    .option(...seed)
    .option(...locale)
    .option(...json)
    .action(async (options) => (await import('./verbs/make-board.js')).makeBoard(options));

  make
    .command('chain')
    .description('loose strips that lead from start to finish by right answers only')
    .requiredOption('--years <years>', 'school years of the children: 4, 3-4, F-2')
    .option('--skills <ids>', 'only these skills, by their ids between commas')
    .option('--own <file>', 'your own questions, before all others; see docs/own-questions.md')
    .option('--number <number>', 'the one number that your own questions are about')
    .option('--cards <count>', 'how many strips, 6 to 16', '10')
    .option('--pitch <pitch>', 'lower, middle or upper part of the class', 'middle')
    .option('--order <order>', 'graded (easy to hard) or mixed', 'graded')
    .option('--count <count>', 'make several, each with a seed of its own')
    .option(...seed)
    .option(...locale)
    .option(...json)
    .action(async (options) => (await import('./verbs/make-chain.js')).makeChain(options));

  make
    .command('trail')
    .description('a mat of questions with answer tiles that join to one unbroken trail')
    .requiredOption('--years <years>', 'school years of the children: 4, 3-4, F-2')
    .option('--skills <ids>', 'only these skills, by their ids between commas')
    .option('--own <file>', 'your own questions, before all others; see docs/own-questions.md')
    .option('--number <number>', 'the one number that your own questions are about')
    .option('--rows <count>', 'rows of tiles, 3 to 6', '4')
    .option('--columns <count>', 'columns of tiles, 3 to 6', '4')
    .option('--pitch <pitch>', 'lower, middle or upper part of the class', 'middle')
    .option('--theme <name>', 'what the picture shows; chosen by the seed when left out')
    .option('--count <count>', 'make several, each with a seed of its own')
    .option(...seed)
    .option(...locale)
    .option(...json)
    .action(async (options) => (await import('./verbs/make-trail.js')).makeTrail(options));

  make
    .command('timed')
    .description('equal forms of one level of timed practice')
    .option('--level <place>', 'a level of the ladder, from 1; see "afterbell ladder"')
    .option('--skills <ids>', 'instead of a level: these skills, by their ids between commas')
    .option('--own <file>', 'instead of a level: your own questions; see docs/own-questions.md')
    .option('--forms <count>', 'how many equal forms, 1 to 100', '2')
    .option('--questions <count>', 'questions on a form, 60 to 120', '60')
    .option('--count <count>', 'make several, each with a seed of its own')
    .option(...seed)
    .option(...locale)
    .option(...json)
    .action(async (options) => (await import('./verbs/make-timed.js')).makeTimed(options));

  program
    .command('ladder')
    .description('the levels of timed practice, simple ones first')
    .option(...json)
    .action(async (options) => (await import('./verbs/ladder.js')).ladder(options));

  make
    .command('jigsaw')
    .description('a rectangle of true rows, cut into interlocking pieces')
    .requiredOption('--years <years>', 'school years of the children: 4, 3-4, F-2')
    .option('--skills <ids>', 'rows from these skills only, by their ids between commas')
    .option('--own <file>', 'your own questions, before all others; see docs/own-questions.md')
    .option('--number <number>', 'the one number that your own questions are about')
    .option('--kind <kind>', 'mixed, sentences, missing, equivalents, families, steps or repeats', 'mixed')
    .option('--rows <count>', 'rows, 3 to 8', '5')
    .option('--columns <count>', 'cells in a row, 5 to 10', '7')
    .option('--level <level>', 'easy, middle or hard: how much must be tried out', 'easy')
    .option('--count <count>', 'make several, each with a seed of its own')
    .option('--steps', 'tell how it comes together, piece by piece')
    .option(...seed)
    .option(...locale)
    .option(...json)
    .action(async (options) => (await import('./verbs/make-jigsaw.js')).makeJigsaw(options));

  program
    .command('questions')
    .description('single questions of a skill, of several in turn, or of a list of your own')
    .option('--skill <ids>', 'a skill of the map, or several between commas; see "afterbell skills"')
    .option(
      '--own <file>',
      'instead of a skill: your own questions, as CSV or lines; see docs/own-questions.md',
    )
    .option('--number <number>', 'the number of the day that your own questions are about')
    .option('--count <count>', 'how many', '10')
    .option(...seed)
    .option(...locale)
    .option(...json)
    .action(async (options) => (await import('./verbs/questions.js')).questions(options));

  program
    .command('skills')
    .description('the skill map')
    .option('--year <years>', 'only these years')
    .option('--strand <id>', 'only this strand')
    .option('--code <code>', 'only what a curriculum statement asks, by its code or the beginning of it')
    .option('--text <words>', 'only those with these words in title, strand or id')
    .option(...json)
    .action(async (options) => (await import('./verbs/skills.js')).skills(options));

  program
    .command('print')
    .argument('<file>', 'what "make" printed as JSON, or - for standard input')
    .description('an activity as PDF')
    .requiredOption('--out <file>', 'the PDF to write')
    .option('--paper <paper>', 'A4, A3 or Letter', 'A4')
    .option(
      '--document <name>',
      'board, pupil, slips, key, relief or practice; of a chain cards, of a trail tiles, of a jigsaw pieces, of all three labels, key or pupil; the whole kit when left out',
    )
    .option('--tiled', 'a poster in parts to be joined')
    .option('--per-page <count>', 'slips to a page: 6 or 8', '6')
    .option('--copies <count>', 'how many slips or sheets', '1')
    .option('--date <date>', 'the day to print, such as 2026-02-03')
    .option('--low-ink', 'outlines instead of solid areas')
    .option('--large-print', 'larger letters where the page has room')
    .option('--first-set <number>', 'the number of the first of several sets; others follow', '1')
    .option('--label <text>', 'your own words on the backs and labels of sets')
    .option('--names <names>', 'children’s names between commas, for name tags')
    .option('--no-backs', 'loose pieces without backs, for one-sided printing')
    .option('--by-stack', 'one piece of every set to a sheet, so that a cut stack falls into sets')
    .action(async (file, options) => (await import('./verbs/print.js')).print(file, options));

  program
    .command('grade')
    .description('right or wrong, and what wrong answers may tell')
    .requiredOption('--answers <file>', 'questions with the answers given, as JSON')
    .option(...locale)
    .option(...json)
    .action(async (options) => (await import('./verbs/grade.js')).grade(options));

  addDataVerbs(program);
  addSetVerbs(program);
  addPracticeVerbs(program);
  return program;
}

/** The parser's message as sentences on one line: "error: unknown command 'bake'\n(Did you mean make?)". */
function sentenceFrom(text: string): string {
  return text
    .replace(/^error: /, '')
    .trim()
    .split(/\s*\n\s*/)
    .map((part) => part.replace(/^\((.*)\)$/, '$1').replace(/(?<![.?!])$/, '.'))
    .join(' ');
}

/** The verbs that work on the data folder. */
function addDataVerbs(program: Command): void {
  const classes = program.command('class').description('classes and children');
  classes
    .command('list')
    .option(...json)
    .action(async (options) => (await import('./verbs/class.js')).listAll(options));
  classes
    .command('import')
    .argument('<file>', 'names, CSV or OneRoster users.csv; - for standard input')
    .requiredOption('--name <name>', 'the name of the class')
    .requiredOption('--years <years>', 'its school years: 4-5')
    .option('--classes <file>', 'OneRoster classes.csv')
    .option('--enrollments <file>', 'OneRoster enrollments.csv')
    .option('--keep-good', 'import the good rows when others have problems')
    .option(...json)
    .action(async (file, options) => (await import('./verbs/class.js')).importClass(file, options));
  classes
    .command('export')
    .argument('<class>', 'id or name')
    .option(...json)
    .action(async (name, options) => (await import('./verbs/class.js')).exportClass(name, options));

  const classOption = ['--class <class>', 'id or name; not needed when there is only one'] as const;
  program
    .command('plan')
    .description('the day’s warm-up of a class')
    .option(...classOption)
    .option('--date <date>', 'the day; today when left out')
    .option(...json)
    .action(async (options) => (await import('./verbs/plan.js')).plan(options));
  program
    .command('mark')
    .description('record results, or show them when no file is given')
    .requiredOption('--sheet <id>', 'the board; "plan" prints its id')
    .option('--answers <file>', 'CSV with the columns child, rung, answer or state; - for standard input')
    .option(...json)
    .action(async (options) => (await import('./verbs/mark.js')).mark(options));
  program
    .command('report')
    .description('what the class, or one child, can do')
    .option(...classOption)
    .option('--child <child>', 'id or name of one child')
    .option(...json)
    .action(async (options) => (await import('./verbs/report.js')).report(options));

  program
    .command('backup')
    .argument('<file>', 'the file to write')
    .description('everything in one file')
    .option('--passphrase <text>', 'encrypt it; AFTERBELL_PASSPHRASE does the same')
    .action(async (file, options) => (await import('./verbs/backup.js')).backup(file, options));
  program
    .command('restore')
    .argument('<file>', 'a file that "backup" wrote')
    .description('put a backup in place')
    .option('--passphrase <text>', 'for an encrypted one; AFTERBELL_PASSPHRASE does the same')
    .option('--replace', 'replace the data that are there')
    .action(async (file, options) => (await import('./verbs/backup.js')).restore(file, options));
  program
    .command('serve')
    .description('the app in the browser, on this computer only')
    .option('--no-open', 'do not offer to open the page')
    .action(async (options) => (await import('./verbs/serve.js')).serve(options));
}
