// afterbell backup | restore
import { writeFileDurably } from '#server/node/durable-file.js';
import process from 'node:process';
import { withServices } from '../data-folder.js';
import { UsageFailure, valueOf } from '../failure.js';
import { readBytes } from '../input.js';
import { printText } from '../output.js';

interface Options {
  readonly passphrase?: string;
  readonly replace?: boolean;
}

function passphraseOf(options: Options): string | null {
  return options.passphrase ?? process.env['AFTERBELL_PASSPHRASE'] ?? null;
}

export async function backup(file: string, options: Options): Promise<void> {
  await withServices(async (services) => {
    const snapshot = valueOf(await services.store.takeSnapshot());
    const bytes = await services.backups.pack(snapshot, passphraseOf(options));
    const written = writeFileDurably(file, bytes);
    if (!written.ok) throw new UsageFailure(`${written.error.message} ${written.error.hint}`);
    printText(
      `${file}: everything is in it${passphraseOf(options) === null ? ', readable by anyone who has the file. Keep it where children’s data may be kept' : ', encrypted'}.`,
    );
  });
}

export async function restore(file: string, options: Options): Promise<void> {
  const bytes = readBytes(file);
  await withServices(async (services) => {
    const snapshot = valueOf(await services.backups.unpack(bytes, passphraseOf(options)));
    valueOf(await services.store.loadSnapshot(snapshot, { replace: options.replace === true }));
    printText(`${file}: restored.`);
  });
}
