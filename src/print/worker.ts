// The print thread: takes one job at a time from printer.ts and answers with bytes. Started from the built files only.
import { parentPort } from 'node:worker_threads';
import { Press } from './press.js';
import type { PrinterJob } from './printer.js';
import { runJob } from './run-job.js';

const port = parentPort;
if (!port) throw new Error('worker.ts runs as a worker thread');

const press = new Press();

port.on('message', async (job: PrinterJob) => {
  try {
    const result = await runJob(press, job);
    const buffers = result.ok && 'pdf' in result.value ? [result.value.pdf.buffer as ArrayBuffer] : [];
    port.postMessage({ result }, buffers);
  } catch (fault) {
    port.postMessage({ fault: fault instanceof Error ? (fault.stack ?? fault.message) : String(fault) });
  }
});
