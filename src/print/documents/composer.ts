// What every document builder is handed: the request, and the names' way to paper.
import type { PrintRequest } from '../request.js';
import type { NamePrinter } from './names.js';

export interface Composer {
  readonly request: PrintRequest;
  readonly names: NamePrinter;
}
