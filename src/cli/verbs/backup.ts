// afterbell backup | restore
import process from 'node:process';
import { readBackup, restore as putInPlace, writeBackup } from '#store/backup.js';
import { withServices } from '../data-folder.js';
import { valueOf } from '../failure.js';
import { readBytes } from '../input.js';
import { printText } from '../output.js';

interface Options {
  readonly passphrase?: string;
  readonly replace?: boolean;
}

function passphraseOf(options: Options): string | null {
  return options.passphrase ?? (process.env['AFTERBELL_PASSPHRASE'] || null);
}

export async function backup(file: string, options: Options): Promise<void> {
  const passphrase = passphraseOf(options);
  await withServices(async (services) => {
    valueOf(writeBackup(file, valueOf(await services.backups.take(passphrase))));
    const told =
      passphrase === null
        ? 'It is not locked: keep it where children’s data may be kept'
        : 'It is locked with your passphrase';
    printText(`${file}: everything is in it. ${told}.`);
  });
}

export async function restore(file: string, options: Options): Promise<void> {
  // The file is checked before the data are even opened.
  const checked = valueOf(await readBackup(readBytes(file), passphraseOf(options) ?? undefined));
  await withServices(async ({ store }) => {
    valueOf(await putInPlace(store, checked, { replace: options.replace === true }));
    printText(`${file}: restored.`);
  });
}
