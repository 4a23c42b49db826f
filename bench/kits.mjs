// Ten numbered sets from the wish to the finished PDF, for each self-checking activity: one command line, nothing warm. The
// memory is that of everything the line starts.
import { statSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { inFolder, medianRun, ROOT, runProgram } from './support/measure.mjs';
import { count, ms, tell } from './support/tell.mjs';

const TARGET_MS = 3000;
const RUNS = 3;
const WISHES = {
  chain: ['--years', '3-4'],
  trail: ['--years', '3-4', '--rows', '4', '--columns', '4'],
  jigsaw: ['--years', '3-4', '--rows', '5', '--columns', '7', '--level', 'middle'],
};
const LOOSE = { chain: 'cards', trail: 'tiles', jigsaw: 'pieces' };

const program = `"${process.execPath}" "${join(ROOT, 'scripts/afterbell.mjs')}"`;

await inFolder(async (folder) => {
  for (const [activity, wish] of Object.entries(WISHES)) {
    const make = `${program} make ${activity} ${wish.join(' ')} --count 10 --json`;
    for (const document of [null, LOOSE[activity]]) {
      const out = join(folder, `${activity}.pdf`);
      const print = `${program} print - --out "${out}" ${document ? `--document ${document}` : ''}`;
      const done = await medianRun(RUNS, () =>
        runProgram('sh', ['-c', `${make} | ${print}`], { withMemory: true }),
      );
      const pages = /(\d+) pages/.exec(done.said)?.[1];
      const memory = done.peakMb === null ? 'memory not told here' : `${count(done.peakMb)} MB at most`;
      tell({
        what: `ten sets, make ${activity} | print${document ? ` --document ${document}` : ', the whole kit'}`,
        measured: `${ms(1000 * done.seconds)}, ${pages} pages, ${count(statSync(out).size / 1000)} kB, ${memory}`,
        target: ms(TARGET_MS),
        met: 1000 * done.seconds <= TARGET_MS,
      });
    }
  }
});
