// Keeps a data folder to one process. Two processes on one folder would lose data without a word.
//
// The owner listens on a local socket (a named pipe on Windows), which the operating system closes when the process dies,
// however it dies. Files owner.1, owner.2, … say where to find the socket; the highest number counts. A newcomer who finds
// that owner dead creates the next number exclusively, so of several newcomers one wins. The highest file is never deleted,
// so a newcomer with an old view creates a number below the highest, sees that afterwards, and withdraws.
import { randomBytes } from 'node:crypto';
import { readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer, connect, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

/** Socket addresses hold about 100 bytes on the common systems (sys/un.h: 104 on macOS, 108 on Linux). */
const ADDRESS_BYTES = 100;
/** How long an owner file may stay unwritten before its writer counts as dead. */
const UNWRITTEN_MS = 2000;
const PROBE_MS = 5000;

export interface Ownership {
  /** Lets the folder go. */
  release(): Promise<void>;
}

/** Runs `use` with an address for the socket file `path` that is short enough, if need be through a temporary link. */
async function withAddress<T>(
  folder: string,
  socket: string,
  use: (address: string) => Promise<T>,
): Promise<T> {
  if (process.platform === 'win32') return use(`\\\\.\\pipe\\${socket}`);
  const direct = join(folder, socket);
  if (Buffer.byteLength(direct) <= ADDRESS_BYTES) return use(direct);
  const link = join(tmpdir(), `ab-${randomBytes(6).toString('hex')}`);
  symlinkSync(folder, link);
  try {
    return await use(join(link, socket));
  } finally {
    rmSync(link, { force: true });
  }
}

/** True when a process listens on the socket. A connection that is neither taken nor refused in time counts as taken. */
function isListening(folder: string, socket: string): Promise<boolean> {
  return withAddress(
    folder,
    socket,
    (address) =>
      new Promise((resolve) => {
        const probe = connect(address);
        const settle = (alive: boolean) => {
          clearTimeout(timer);
          probe.destroy();
          resolve(alive);
        };
        const timer = setTimeout(() => settle(true), PROBE_MS);
        probe.once('connect', () => settle(true));
        probe.once('error', (error: NodeJS.ErrnoException) => {
          settle(error.code !== 'ENOENT' && error.code !== 'ECONNREFUSED');
        });
      }),
  );
}

function listen(folder: string, socket: string): Promise<Server> {
  return withAddress(
    folder,
    socket,
    (address) =>
      new Promise((resolve, reject) => {
        const server = createServer((connection) => connection.destroy());
        server.once('error', reject);
        server.listen(address, () => {
          // Owning a folder must not keep a finished program running.
          server.unref();
          resolve(server);
        });
      }),
  );
}

/** Numbers of the owner files, highest first. */
function generations(folder: string): number[] {
  return readdirSync(folder)
    .map((name) => /^owner\.(\d{1,9})$/.exec(name)?.[1])
    .filter((digits) => digits !== undefined)
    .map(Number)
    .sort((a, b) => b - a);
}

/** The socket's name in an owner file; null when the file is not (yet) written. */
function socketIn(folder: string, generation: number): string | null {
  try {
    const text = readFileSync(join(folder, `owner.${generation}`), 'utf8');
    return /^(owner-[0-9a-f]+\.socket)\n$/.exec(text)?.[1] ?? null;
  } catch {
    return null;
  }
}

async function isOwned(folder: string, generation: number): Promise<boolean> {
  for (let waited = 0; waited <= UNWRITTEN_MS; waited += 50) {
    const socket = socketIn(folder, generation);
    if (socket !== null) return isListening(folder, socket);
    await wait(50);
  }
  return false;
}

/** Deletes what dead owners left; sockets of living newcomers who lost are theirs to delete. */
function sweep(folder: string, below: number): void {
  for (const generation of generations(folder)) {
    if (generation >= below) continue;
    const socket = socketIn(folder, generation);
    if (socket !== null && basename(socket) === socket) rmSync(join(folder, socket), { force: true });
    rmSync(join(folder, `owner.${generation}`), { force: true });
  }
}

/** Takes the folder for this process, or null when another one has it. */
export async function takeFolder(folder: string): Promise<Ownership | null> {
  const socket = `owner-${randomBytes(8).toString('hex')}.socket`;
  const server = await listen(folder, socket);
  const release = async () => {
    await new Promise<void>((resolve) => server.close(() => resolve()));
    rmSync(join(folder, socket), { force: true });
  };
  try {
    for (;;) {
      const highest = generations(folder)[0] ?? 0;
      if (highest > 0 && (await isOwned(folder, highest))) {
        await release();
        return null;
      }
      const mine = join(folder, `owner.${highest + 1}`);
      try {
        writeFileSync(mine, `${socket}\n`, { flag: 'wx' });
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code === 'EEXIST') continue;
        throw error;
      }
      // Two checks after the claim: a higher claim means that this one came too late; a predecessor who was slow to write
      // may have come alive meanwhile.
      const overtaken = (generations(folder)[0] ?? 0) > highest + 1;
      const revived = highest > 0 && socketIn(folder, highest) !== null && (await isOwned(folder, highest));
      if (!overtaken && !revived) {
        sweep(folder, highest + 1);
        return { release };
      }
      rmSync(mine, { force: true });
    }
  } catch (error) {
    await release();
    throw error;
  }
}
