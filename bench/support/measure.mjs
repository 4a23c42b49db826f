// Measuring: time on the clock beside processor time, medians, the memory of a process and all it started.
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** The value below which a share of the values lies. */
export function quantile(values, share) {
  return [...values].sort((a, b) => a - b)[Math.floor(share * (values.length - 1))];
}

export function median(values) {
  return quantile(values, 0.5);
}

/** Milliseconds on the clock, and of the processor, which other programs on the machine stretch less. */
export async function timed(run) {
  const cpu = process.cpuUsage();
  const start = process.hrtime.bigint();
  const value = await run();
  const clockMs = Number(process.hrtime.bigint() - start) / 1e6;
  const { user, system } = process.cpuUsage(cpu);
  return { clockMs, cpuMs: (user + system) / 1000, value };
}

/** A folder that is gone when `work` is done. */
export async function inFolder(work) {
  const folder = mkdtempSync(join(tmpdir(), 'afterbell-bench-'));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export function freePort() {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}

/** The ids of a process and of everything it started that still runs. Linux only. */
function family(pid) {
  const parents = new Map();
  for (const name of readdirSync('/proc')) {
    if (!/^\d+$/.test(name)) continue;
    try {
      const stat = readFileSync(`/proc/${name}/stat`, 'utf8');
      parents.set(Number(name), Number(stat.slice(stat.lastIndexOf(')') + 2).split(' ')[1]));
    } catch {
      // It ended meanwhile.
    }
  }
  const found = new Set([pid]);
  for (let grew = true; grew; ) {
    grew = false;
    for (const [child, parent] of parents) {
      if (found.has(parent) && !found.has(child)) {
        found.add(child);
        grew = true;
      }
    }
  }
  return found;
}

/** Megabytes of all these processes; a page of memory that several share counts once (PSS). */
function sharedMemoryMb(pids) {
  let kilobytes = 0;
  for (const pid of pids) {
    try {
      kilobytes += Number(/^Pss: +(\d+)/m.exec(readFileSync(`/proc/${pid}/smaps_rollup`, 'utf8'))?.[1] ?? 0);
    } catch {
      // It ended meanwhile, or may not be looked at.
    }
  }
  return kilobytes / 1024;
}

/**
 * Runs a program to its end: seconds on the clock, exit status, what it wrote to standard error, and, when asked for, the
 * greatest memory seen of it and everything it started, looked at every 100 ms (null where the system does not tell).
 */
export function runProgram(command, args, { env = {}, withMemory = false, cwd = ROOT } = {}) {
  const canLook = withMemory && existsSync('/proc/self/smaps_rollup');
  return new Promise((resolve, reject) => {
    const start = process.hrtime.bigint();
    const child = spawn(command, args, {
      cwd,
      env: { ...process.env, ...env },
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    let said = '';
    let peakMb = 0;
    child.stderr.on('data', (chunk) => {
      said += chunk;
    });
    const look = canLook
      ? setInterval(() => {
          peakMb = Math.max(peakMb, sharedMemoryMb(family(child.pid)));
        }, 100)
      : null;
    child.once('error', reject);
    child.once('close', (status) => {
      if (look) clearInterval(look);
      const seconds = Number(process.hrtime.bigint() - start) / 1e9;
      resolve({ status, seconds, said, peakMb: canLook ? peakMb : null });
    });
  });
}

/** The middle one of several runs of a program, by time. Throws when one fails. */
export async function medianRun(times, run) {
  const runs = [];
  for (let i = 0; i < times; i++) {
    const done = await run(i);
    if (done.status !== 0) throw new Error(done.said);
    runs.push(done);
  }
  return runs.sort((a, b) => a.seconds - b.seconds)[Math.floor((times - 1) / 2)];
}
