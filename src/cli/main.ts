// The `afterbell` command. Verbs are described here and loaded only when called, so that each starts fast.
import process from 'node:process';
import { CommanderError } from 'commander';
import { EXIT_INTERNAL, EXIT_USAGE, UsageFailure } from './failure.js';
import { note } from './output.js';
import { createProgram } from './program.js';

try {
  await createProgram().parseAsync(process.argv);
} catch (error) {
  if (error instanceof CommanderError) {
    // A verb that has verbs of its own was named alone, or none at all; its help stands above.
    if (error.code === 'commander.help')
      note('afterbell: say what to do, as in "afterbell make board --help"; the commands are listed above.');
    process.exitCode = error.exitCode === 0 ? 0 : EXIT_USAGE;
  } else if (error instanceof UsageFailure) {
    note(`afterbell: ${error.message}`);
    process.exitCode = EXIT_USAGE;
  } else {
    const told = error instanceof Error ? error.message.split('\n')[0] : String(error);
    note(
      `afterbell: something went wrong inside the program (${told}). Nothing was changed; please report it with the command you typed.`,
    );
    if (process.env['AFTERBELL_DEBUG']) console.error(error);
    process.exitCode = EXIT_INTERNAL;
  }
}
