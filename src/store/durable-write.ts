// Writes that survive a power cut: the file first, then its name.
import {
  closeSync,
  fsyncSync,
  lstatSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';

/** Syncs a folder's list of names. Windows has no such call and does not need one. */
export function syncFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** Writes a file so that after a crash either the old or the whole new one is there. Throws the system's error. */
export function writeDurably(path: string, bytes: Uint8Array): void {
  const temporary = `${path}.writing`;
  try {
    const handle = openSync(temporary, 'w', 0o600);
    try {
      for (let at = 0; at < bytes.length; ) at += writeSync(handle, bytes, at);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    renameSync(temporary, path);
  } catch (error) {
    rmSync(temporary, { force: true });
    throw error;
  }
  syncFolder(dirname(path));
}

/** Syncs every file and folder below `folder`, and the folder itself. */
export function syncTree(folder: string): void {
  for (const name of readdirSync(folder)) {
    const path = join(folder, name);
    const stats = lstatSync(path);
    if (stats.isDirectory()) syncTree(path);
    else if (stats.isFile()) {
      // Windows syncs only what is open for writing.
      const handle = openSync(path, 'r+');
      try {
        fsyncSync(handle);
      } finally {
        closeSync(handle);
      }
    }
  }
  syncFolder(folder);
}
