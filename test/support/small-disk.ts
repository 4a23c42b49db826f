// A small disk that a test can fill: a tmpfs, which only root on Linux can mount.
import { spawnSync } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, rmSync, truncateSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface SmallDisk {
  readonly folder: string;
  /** Takes all the room that is left, but for about `leaveBytes`. */
  fill(leaveBytes?: number): void;
  /** Gives the room taken by fill back. */
  empty(): void;
  resize(megabytes: number): void;
  unmount(): void;
}

function mount(...args: readonly string[]): boolean {
  return spawnSync('mount', args, { stdio: 'ignore' }).status === 0;
}

/** A disk of that size, or null where mounting is not allowed; with CI set, it must be. */
export function mountSmallDisk(megabytes: number): SmallDisk | null {
  const folder = mkdtempSync(join(tmpdir(), 'afterbell-disk-'));
  if (process.platform !== 'linux' || !mount('-t', 'tmpfs', '-o', `size=${megabytes}m`, 'tmpfs', folder)) {
    rmSync(folder, { recursive: true });
    if (process.env['CI'])
      throw new Error('CI is set, but no small disk can be mounted. Mend: run as root on Linux.');
    return null;
  }
  const ballast = join(folder, 'ballast');
  return {
    folder,
    fill(leaveBytes = 0) {
      const handle = openSync(ballast, 'w');
      let size = 0;
      try {
        for (let chunk = 1024 ** 2; chunk >= 4096; ) {
          try {
            size += writeSync(handle, Buffer.alloc(chunk));
          } catch {
            chunk /= 2;
          }
        }
      } finally {
        closeSync(handle);
      }
      if (leaveBytes > 0) truncateSync(ballast, Math.max(0, size - leaveBytes));
    },
    empty: () => rmSync(ballast, { force: true }),
    resize(size) {
      if (!mount('-o', `remount,size=${size}m`, folder)) throw new Error('remount failed');
    },
    unmount() {
      spawnSync('umount', ['-l', folder]);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
