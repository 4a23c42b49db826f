// The data folder: what lies in it, whether it is ours, and how it is first made.
//   afterbell.json   says that the folder is ours and whether the database in it is complete
//   database/        the embedded database
//   database.new/    a database under creation; renamed when it is complete and synced
//   owner.N          who has the folder open (owner.ts)
import { existsSync, mkdirSync, readdirSync, readFileSync, realpathSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { type Result, refuse, succeed } from '../result.js';
import { syncFolder, writeDurably } from '../durable-write.js';

const MARKER = 'afterbell.json';
const FORMAT = 'afterbell-data';
/** The database's own version; a folder of another one opens only after export and import. */
export const POSTGRES_MAJOR = '18';

export interface DataFolder {
  /** Absolute, links resolved. */
  readonly path: string;
  readonly database: string;
  readonly unfinished: string;
  /** False before the first creation has finished. */
  readonly ready: boolean;
}

interface Marker {
  readonly format: string;
  readonly postgres: string;
  readonly ready: boolean;
}

function foreign(path: string): Result<never> {
  return refuse(
    'folder.foreign',
    `The folder ${path} holds other files than Afterbell's data.`,
    'Choose an empty folder, or one that does not exist yet.',
  );
}

function corrupt(path: string, what: string): Result<never> {
  return refuse(
    'folder.corrupt',
    `The data in ${path} cannot be opened: ${what}.`,
    'Choose an empty folder and restore the last backup into it; keep the damaged folder until that is done.',
  );
}

function readMarker(path: string): Marker | null | 'unreadable' {
  let text: string;
  try {
    text = readFileSync(join(path, MARKER), 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
  try {
    const { format, postgres, ready } = JSON.parse(text) as Partial<Marker>;
    if (typeof format === 'string' && typeof postgres === 'string' && typeof ready === 'boolean') {
      return { format, postgres, ready };
    }
  } catch {
    // Not JSON, or not an object.
  }
  return 'unreadable';
}

/** Makes the folder if need be, and checks that it may be used; call before taking ownership. Creates nothing inside. */
export function checkFolder(dataDir: string): Result<string> {
  const wanted = resolve(dataDir);
  try {
    if (!existsSync(wanted)) {
      mkdirSync(wanted, { recursive: true, mode: 0o700 });
      syncFolder(dirname(wanted));
    }
    const path = realpathSync(wanted);
    const marker = readMarker(path);
    if (marker === null) {
      const strangers = readdirSync(path).filter(
        (name) => !/^(owner\.|owner-|afterbell\.json\.writing$|\.|lost\+found$)/.test(name),
      );
      return strangers.length > 0 ? foreign(path) : succeed(path);
    }
    if (marker === 'unreadable') return corrupt(path, `its file ${MARKER} is damaged`);
    if (marker.format !== FORMAT) return foreign(path);
    return succeed(path);
  } catch (error) {
    return unusable(wanted, error);
  }
}

/** Reads the state of a folder that this process owns. */
export function inspectFolder(path: string): Result<DataFolder> {
  const marker = readMarker(path);
  const folder: DataFolder = {
    path,
    database: join(path, 'database'),
    unfinished: join(path, 'database.new'),
    ready: marker !== null && marker !== 'unreadable' && marker.ready,
  };
  if (!folder.ready) return succeed(folder);
  let version: string;
  try {
    version = readFileSync(join(folder.database, 'PG_VERSION'), 'utf8').trim();
  } catch {
    return corrupt(path, 'the database in it is missing or incomplete');
  }
  if (version !== POSTGRES_MAJOR) {
    return refuse(
      'schema.newer',
      `The data in ${path} were written by another version of Afterbell (database ${version}, not ${POSTGRES_MAJOR}).`,
      'Open them with that version, make a backup there, and restore it with this one.',
    );
  }
  return succeed(folder);
}

/** Marks the folder as ours: before the database is made, and again when it is complete. Throws the system's error. */
export function markFolder(path: string, ready: boolean): void {
  const marker: Marker = { format: FORMAT, postgres: POSTGRES_MAJOR, ready };
  writeDurably(join(path, MARKER), new TextEncoder().encode(`${JSON.stringify(marker)}\n`));
}

/** The refusal for a folder that the system does not let us use. */
export function unusable(path: string, error: unknown): Result<never> {
  const code = (error as NodeJS.ErrnoException).code ?? '';
  if (code === 'ENOSPC') {
    return refuse(
      'disk.full',
      `The disk with the folder ${path} is full.`,
      'Free at least 200 MB there, or choose a folder on another disk.',
    );
  }
  if (['EACCES', 'EPERM', 'EROFS', 'ENOTDIR', 'EEXIST', 'ENOENT', 'ENAMETOOLONG', 'ELOOP'].includes(code)) {
    return refuse(
      'folder.unwritable',
      `Afterbell cannot write in the folder ${path} (${code}).`,
      'Choose a folder of your own with AFTERBELL_DATA, or ask who looks after the computer for write access.',
    );
  }
  throw error;
}

/** The refusal for a database that does not start in a folder that is ours. */
export function damaged(path: string): Result<never> {
  return corrupt(path, 'the database in it is damaged');
}
