// One job of the print queue, done by the press of the thread it is called in.
import type { Press } from './press.js';
import type { PrinterJob } from './printer.js';
import type { PreviewedBoard, PrintedBoard, Result } from './request.js';

/** What the press answers to a job. */
export function runJob(press: Press, job: PrinterJob): Promise<Result<PrintedBoard | PreviewedBoard>> {
  if (job.task === 'print') return press.print(job.request);
  if (job.task === 'preview') return press.preview(job.request);
  if (job.task === 'printTimed') return press.printTimed(job.request);
  return job.task === 'printKit' ? press.printKit(job.request) : press.previewKit(job.request);
}
