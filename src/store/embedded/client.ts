// The bridge to the embedded database's thread. One transaction at a time: the database is a single connection.
import { Worker } from 'node:worker_threads';
import { DatabaseStopped } from '../errors.js';

export interface QueryResult {
  readonly rows: readonly unknown[];
  readonly fields: readonly { readonly name: string; readonly dataTypeID: number }[];
  readonly affectedRows?: number;
}

/** What the Drizzle driver for the embedded database asks of its client. */
export interface QueryClient {
  query(
    sql: string,
    params?: unknown[],
    options?: { readonly rowMode?: 'array' | 'object' },
  ): Promise<QueryResult>;
}

interface Reply {
  readonly id: number;
  readonly ok: boolean;
  readonly value?: unknown;
  readonly error?: {
    readonly name: string;
    readonly message: string;
    /** SQLSTATE, or the system's name for a file error; empty when neither is known. */
    readonly code: string;
    readonly severity: string;
  };
}

interface Waiting {
  resolve(value: unknown): void;
  reject(error: Error): void;
}

export interface EmbeddedOptions {
  readonly folder: string;
  /** A packed data folder to start from, where `folder` is empty. */
  readonly template: Uint8Array | null;
  /** False leaves the syncing file layer out: only to prove that such a store refuses to open. */
  readonly withSync: boolean;
}

type Request =
  | {
      readonly kind: 'query';
      readonly sql: string;
      readonly params: readonly unknown[];
      readonly rowMode: 'array' | 'object';
    }
  | { readonly kind: 'close' | 'dump' };

/** The database's own message that it has stopped; the end of its thread follows. */
const STOPPED = -1;
/** The longest work, a restore, takes seconds; a database that has not answered by then never will. */
const ANSWER_MS = 120_000;
const NO_SPACE = /No space left on device|ENOSPC/;

export class EmbeddedClient implements QueryClient {
  readonly #options: EmbeddedOptions;
  readonly #syncs = new Int32Array(new SharedArrayBuffer(4));
  #worker: Worker | null = null;
  #waiting = new Map<number, Waiting>();
  #lastId = 0;
  #lastComplaint = '';
  #turn: Promise<unknown> = Promise.resolve();

  constructor(options: EmbeddedOptions) {
    this.#options = options;
  }

  /** Starts the database and waits until it takes queries; throws DatabaseStopped when it does not. */
  start(): Promise<void> {
    const worker = new Worker(new URL('./worker.js', import.meta.url), {
      workerData: { ...this.#options, syncs: this.#syncs.buffer },
      // The database writes its log lines to both; they are kept for the message and shown to nobody.
      stdout: true,
      stderr: true,
    });
    this.#worker = worker;
    const waiting = new Map<number, Waiting>();
    this.#waiting = waiting;
    this.#lastComplaint = '';
    const listen = (chunk: Buffer | string) => {
      const text = String(chunk);
      if (/PANIC|FATAL|ERROR|No space/.test(text)) this.#lastComplaint = text.slice(0, 500);
    };
    worker.stdout.on('data', listen);
    worker.stderr.on('data', listen);
    const stop = (message: string) => {
      if (this.#worker === worker) this.#worker = null;
      const complaint = `${message} ${this.#lastComplaint}`;
      for (const { reject } of waiting.values())
        reject(new DatabaseStopped(complaint, NO_SPACE.test(complaint)));
      waiting.clear();
    };
    worker.on('error', (error) => stop(String(error)));
    worker.on('exit', (status) => stop(`The database's thread ended with status ${status}.`));
    const ready = new Promise<void>((resolve, reject) => {
      waiting.set(0, { resolve: () => resolve(), reject });
    });
    worker.on('message', (reply: Reply) => {
      if (reply.id === STOPPED) {
        this.#lastComplaint = `${reply.error?.code ?? ''} ${reply.error?.message ?? ''}`;
        return;
      }
      const request = waiting.get(reply.id);
      waiting.delete(reply.id);
      if (!request) return;
      if (reply.ok) request.resolve(reply.value);
      else request.reject(this.#errorOf(reply, worker));
    });
    return ready;
  }

  /** A statement error of the database, or DatabaseStopped when the database itself gave up. */
  #errorOf(reply: Reply, worker: Worker): Error {
    const { name, message, code, severity } = reply.error ?? {
      name: '',
      message: '',
      code: '',
      severity: '',
    };
    // A panic ends the database although it still names its cause; a later request would wait for ever.
    const isAlive = /^[0-9A-Z]{5}$/.test(code) && !/^(PANIC|FATAL)$/.test(severity);
    if (isAlive) return Object.assign(new Error(message), { code });
    const complaint = `${name}: ${message} ${this.#lastComplaint}`;
    if (this.#worker === worker) this.#worker = null;
    void worker.terminate();
    return new DatabaseStopped(complaint, code === 'ENOSPC' || code === '53100' || NO_SPACE.test(complaint));
  }

  #send(request: Request): Promise<unknown> {
    const worker = this.#worker;
    if (!worker)
      return Promise.reject(
        new DatabaseStopped('The database has stopped.', NO_SPACE.test(this.#lastComplaint)),
      );
    const id = ++this.#lastId;
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => void worker.terminate(), ANSWER_MS);
      this.#waiting.set(id, {
        resolve: (value) => {
          clearTimeout(timer);
          resolve(value);
        },
        reject: (error) => {
          clearTimeout(timer);
          reject(error);
        },
      });
      worker.postMessage({ id, ...request });
    });
  }

  /** Runs `work` when everything before it has ended. */
  #inTurn<T>(work: () => Promise<T>): Promise<T> {
    const mine = this.#turn.then(work);
    this.#turn = mine.catch(() => undefined);
    return mine;
  }

  async #execute(
    sql: string,
    params: unknown[] = [],
    options: { readonly rowMode?: 'array' | 'object' } = {},
  ): Promise<QueryResult> {
    return (await this.#send({
      kind: 'query',
      sql,
      params,
      rowMode: options.rowMode ?? 'object',
    })) as QueryResult;
  }

  query(
    sql: string,
    params?: unknown[],
    options?: { readonly rowMode?: 'array' | 'object' },
  ): Promise<QueryResult> {
    return this.#inTurn(() => this.#execute(sql, params, options));
  }

  /** Runs `work` in a transaction, committed on return and rolled back on a throw. A database that stopped is started again first. */
  transaction<T>(work: (client: QueryClient) => Promise<T>): Promise<T> {
    return this.#inTurn(async () => {
      if (!this.#worker) await this.start();
      await this.#execute('begin');
      try {
        const value = await work({ query: (sql, params, options) => this.#execute(sql, params, options) });
        await this.#execute('commit');
        return value;
      } catch (thrown) {
        if (this.#worker) await this.#execute('rollback').catch(() => undefined);
        throw thrown;
      }
    });
  }

  /** Syncs to the disk since this client was made. */
  syncs(): number {
    return Atomics.load(this.#syncs, 0);
  }

  /** The whole data folder, packed: material for a template, not a backup. */
  dump(): Promise<Uint8Array> {
    return this.#inTurn(async () => (await this.#send({ kind: 'dump' })) as Uint8Array);
  }

  /** Shuts the database down after the work under way. */
  close(): Promise<void> {
    return this.#inTurn(async () => {
      const worker = this.#worker;
      if (!worker) return;
      const ended = new Promise<void>((resolve) => worker.once('exit', () => resolve()));
      await this.#send({ kind: 'close' }).catch(() => worker.terminate());
      await ended;
      this.#worker = null;
    });
  }
}
