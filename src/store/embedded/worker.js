// The embedded database on its own thread: it blocks the thread it runs on. Plain JavaScript, checked by the compiler,
// because a worker must start from the sources (tests) as well as from dist/.
import { closeSync, fsyncSync, openSync } from 'node:fs';
import { dirname } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { PGlite } from '@electric-sql/pglite';
import { NodeFS } from '@electric-sql/pglite/nodefs';

/**
 * @typedef {{ folder: string, template: Uint8Array | null, withSync: boolean, syncs: SharedArrayBuffer }} WorkerData
 * @typedef {{ id: number, kind: 'query', sql: string, params: unknown[], rowMode: 'array' | 'object' }
 *   | { id: number, kind: 'close' | 'dump' }} Request
 */

const data = /** @type {WorkerData} */ (workerData);
/** Number of the message that no request asked for: the database has stopped. */
const STOPPED = -1;
/** Counts file syncs; a commit that does not raise it is not on the disk. Shared, so that it outlives this thread. */
const syncs = new Int32Array(data.syncs);

/** PGlite's file layer with what it leaves out. It reaches into an unpublished object: keep PGlite's version pinned. */
class CarefulFiles extends NodeFS {
  /**
   * @override
   * @param {PGlite} pg
   * @param {any} options
   */
  async init(pg, options) {
    const { emscriptenOpts } = await super.init(pg, options);
    const steps = data.withSync ? [addLogGuard, addSync] : [addLogGuard];
    emscriptenOpts.preRun = [...(emscriptenOpts.preRun ?? []), ...steps];
    return { emscriptenOpts };
  }
}

/**
 * Ends this thread at once. A database that cannot write or sync its log gives up, but in this build it may then go
 * round for ever without answering; what is on the disk is what a start after a crash works with.
 * @param {unknown} error
 */
function stop(error) {
  parentPort?.postMessage({ id: STOPPED, ok: false, error: plainError(error) });
  process.exit(1);
}

/** @param {any} mod the database's module, before it runs */
function addLogGuard(mod) {
  const { stream_ops: operations } = mod.NODEFS;
  const write = operations.write;
  /** @type {(stream: any, ...rest: any[]) => number} */
  operations.write = (stream, ...rest) => {
    try {
      return write(stream, ...rest);
    } catch (error) {
      if (String(stream.path).includes('/pg_wal/')) stop(error);
      throw error;
    }
  };
}

/** @param {any} mod the database's module, before it runs */
function addSync(mod) {
  const nodefs = mod.NODEFS;
  /** @type {Set<string>} folders with names that came, went or changed since the last sync */
  const changedFolders = new Set();
  /** @param {any} stream */
  nodefs.stream_ops.fsync = (stream) => {
    try {
      fsyncSync(stream.nfd);
      for (const folder of changedFolders) syncFolder(folder);
    } catch (error) {
      // After a failed sync nobody knows what is on the disk: going on would acknowledge what is not there.
      stop(error);
    }
    changedFolders.clear();
    Atomics.add(syncs, 0, 1);
    return 0;
  };
  for (const operation of ['mknod', 'unlink', 'rmdir']) {
    const original = nodefs.node_ops[operation];
    /** @type {(parent: any, ...rest: any[]) => any} */
    nodefs.node_ops[operation] = (parent, ...rest) => {
      const result = original(parent, ...rest);
      changedFolders.add(nodefs.realPath(parent));
      return result;
    };
  }
  const rename = nodefs.node_ops.rename;
  /** @type {(node: any, parent: any, name: string) => void} */
  nodefs.node_ops.rename = (node, parent, name) => {
    changedFolders.add(dirname(nodefs.realPath(node)));
    rename(node, parent, name);
    changedFolders.add(nodefs.realPath(parent));
  };
}

/** @param {string} folder */
function syncFolder(folder) {
  // Windows cannot open a folder for syncing and does not need it.
  if (process.platform === 'win32') return;
  try {
    const handle = openSync(folder, 'r');
    try {
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
  } catch (error) {
    // The folder itself may be gone by now.
    if (/** @type {NodeJS.ErrnoException} */ (error).code !== 'ENOENT') throw error;
  }
}

/** What the file layer calls a full disk and a failing one (errno of the WASI interface). */
const FILE_ERRORS = new Map([
  [51, 'ENOSPC'],
  [29, 'EIO'],
]);

/** @param {any} thrown */
function plainError(thrown) {
  const { name, message, code, errno, severity } = thrown ?? {};
  return {
    name: String(name ?? 'Error'),
    message: String(message ?? thrown),
    code: String(code ?? FILE_ERRORS.get(errno) ?? ''),
    severity: String(severity ?? ''),
  };
}

/** @type {(value: string) => string} */
const asIs = (value) => value;
/** Dates and times stay text, also in arrays. Type numbers: pg_type of PostgreSQL. */
const parsers = Object.fromEntries(
  [1082, 1114, 1184, 1186, 1115, 1182, 1185, 1187, 1231].map((type) => [type, asIs]),
);

async function main() {
  const port = /** @type {import('node:worker_threads').MessagePort} */ (parentPort);
  const startParams = [
    // PGlite's own list without -F, which would switch syncing off.
    ...PGlite.defaultStartParams.filter((/** @type {string} */ parameter) => parameter !== '-F'),
    // The default on this platform never reaches the file layer.
    '-c',
    'wal_sync_method=fsync',
    '-c',
    'shared_buffers=32MB',
    '-c',
    'synchronous_commit=on',
  ];
  const pg = await PGlite.create({
    fs: new CarefulFiles(data.folder),
    startParams,
    ...(data.template ? { loadDataDir: new Blob([/** @type {any} */ (data.template)]) } : {}),
  });
  port.on('message', async (/** @type {Request} */ request) => {
    try {
      if (request.kind === 'query') {
        const { rows, fields, affectedRows } = await pg.query(request.sql, request.params, {
          rowMode: request.rowMode,
          parsers,
        });
        port.postMessage({ id: request.id, ok: true, value: { rows, fields, affectedRows } });
      } else if (request.kind === 'dump') {
        const blob = await pg.dumpDataDir('gzip');
        port.postMessage({ id: request.id, ok: true, value: new Uint8Array(await blob.arrayBuffer()) });
      } else {
        await pg.close();
        port.postMessage({ id: request.id, ok: true, value: null });
        port.close();
      }
    } catch (error) {
      port.postMessage({ id: request.id, ok: false, error: plainError(error) });
    }
  });
  port.postMessage({ id: 0, ok: true, value: null });
}

main().catch((error) => {
  parentPort?.postMessage({ id: 0, ok: false, error: plainError(error) });
  parentPort?.close();
});
