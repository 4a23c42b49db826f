// The verbs for printed sets and the rota, with their options and help.
import type { Command } from 'commander';

const json = ['--json', 'print one JSON document'] as const;
const ofClass = ['--class <class>', 'id or name; not needed when there is only one'] as const;

/** Adds `sets` and `rota`. */
export function addSetVerbs(program: Command): void {
  addSets(
    program
      .command('sets')
      .description('printed sets on the shelf: made once, lent to one child after another'),
  );
  addRota(program.command('rota').description('who has which set today'));
}

function addSets(sets: Command): void {
  sets
    .command('list')
    .description('all sets, their boxes, and what is done with them')
    .option('--kind <kind>', 'only chains, trails or jigsaws: chain, trail or jigsaw')
    .option(...ofClass)
    .option(...json)
    .action(async (options) => (await import('./verbs/sets.js')).listSets(options));
  sets
    .command('make')
    .description('make sets and put them on the shelf under the next numbers')
    .requiredOption('--kind <kind>', 'chain, trail or jigsaw')
    .requiredOption('--band <band>', 'lower (years 1-2), middle (3-4) or upper (5-6)')
    .option('--count <count>', 'how many, 1 to 10', '10')
    .option('--skills <ids>', 'chains and trails: only these skills, by their ids between commas')
    .option('--due', 'chains and trails: what the class is due to review comes first')
    .option('--seed <number>', 'names the sets for ever; new ones each time when left out')
    .option('--cards <count>', 'chains: how many strips')
    .option('--rows <count>', 'trails and jigsaws: rows')
    .option('--columns <count>', 'trails and jigsaws: columns')
    .option('--level <level>', 'jigsaws: easy, middle or hard')
    .option('--rows-of <kind>', 'jigsaws: mixed, sentences, equivalents, families, steps or repeats')
    .option(...ofClass)
    .option(...json)
    .action(async (options) => (await import('./verbs/sets.js')).makeMore(options));
  sets
    .command('keep')
    .argument('<file>', 'what "make" printed as JSON, or - for standard input')
    .description('put sets on the shelf that were made before; their proofs are worked out again first')
    .requiredOption('--band <band>', 'lower, middle or upper')
    .option(...ofClass)
    .option(...json)
    .action(async (file, options) => (await import('./verbs/sets.js')).keep(file, options));
  sets
    .command('show')
    .argument('<sets...>', 'such as chain-middle-7, or several: chain-middle-1..10')
    .description('sets as the JSON that "print" reads')
    .option(...ofClass)
    .action(async (names, options) => (await import('./verbs/sets.js')).showSets(names, options));
  sets
    .command('tick')
    .argument('<sets...>', 'such as chain-middle-7, or several: chain-middle-1..10')
    .description('note what is done with sets')
    .requiredOption('--step <step>', 'printed, cut, laminated or boxed')
    .option('--off', 'it is not done after all')
    .option(...ofClass)
    .option(...json)
    .action(async (names, options) => (await import('./verbs/sets.js')).tick(names, options));
  sets
    .command('note')
    .argument('<set>', 'such as chain-middle-7')
    .argument('<text>', 'the note; "" takes it away')
    .description('a note about a set, such as a torn strip')
    .option(...ofClass)
    .option(...json)
    .action(async (name, text, options) => (await import('./verbs/sets.js')).noteOn(name, text, options));
  sets
    .command('remove')
    .argument('<set>', 'such as chain-middle-7')
    .description('take a set off the shelf that was never printed nor lent')
    .option(...ofClass)
    .option(...json)
    .action(async (name, options) => (await import('./verbs/sets.js')).remove(name, options));
}

function addRota(rota: Command): void {
  const verb = (name: string, description: string) =>
    rota
      .command(name)
      .description(description)
      .option('--kind <kind>', 'chain, trail or jigsaw', 'chain')
      .option(...ofClass);
  const child = ['<child>', 'id or name of the child'] as const;
  verb('show', 'who has which set')
    .option(...json)
    .action(async (options) => (await import('./verbs/rota.js')).showRota(options));
  verb('hand-out', 'a set for everyone who is here and has none')
    .option(...json)
    .action(async (options) => (await import('./verbs/rota.js')).handOutSets(options));
  verb('finished', 'the child’s set is done; it gets the next')
    .argument(...child)
    .option(...json)
    .action(async (name, options) => (await import('./verbs/rota.js')).finished(name, options));
  verb('give', 'give the child this set, whatever comes next')
    .argument(...child)
    .argument('<set>', 'such as chain-middle-7')
    .option(...json)
    .action(async (name, set, options) => (await import('./verbs/rota.js')).give(name, set, options));
  verb('take-back', 'the child’s set goes back unfinished')
    .argument(...child)
    .option(...json)
    .action(async (name, options) => (await import('./verbs/rota.js')).takeBack(name, options));
  verb('away', 'the child is away today and keeps its set')
    .argument(...child)
    .option('--back', 'the child is here after all')
    .option(...json)
    .action(async (name, options) => (await import('./verbs/rota.js')).away(name, options));
  verb('band', 'the band of the child’s sets')
    .argument(...child)
    .argument('<band>', 'lower, middle or upper; year lets it follow from the school year')
    .option(...json)
    .action(async (name, band, options) => (await import('./verbs/rota.js')).band(name, band, options));
  verb('undo', 'take back the last change of today')
    .option(...json)
    .action(async (options) => (await import('./verbs/rota.js')).undoTurn(options));
  verb('print', 'a page for the wall, with the sets that come next')
    .requiredOption('--out <file>', 'the PDF to write')
    .action(async (options) => (await import('./verbs/rota.js')).printRotaTo(options));
}
