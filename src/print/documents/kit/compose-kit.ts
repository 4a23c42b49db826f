// A kit request -> the page data of all its parts, or a plain refusal.
import type { Coverage } from '../../fonts/coverage.js';
import {
  CUTTINGS,
  KIT_DOCUMENTS,
  type KitDocument,
  type KitRequest,
  type KitSet,
} from '../../kit-request.js';
import { refuse, type Result } from '../../request.js';
import { problemWithCopies, problemWithDocument, problemWithPaper } from '../checks.js';
import { NamePrinter } from '../names.js';
import type { PartData } from '../page-data.js';
import { type Composed, inPieces } from '../pieces.js';
import { type ActivityKit, type KitComposer, setsInWords } from './activity-kit.js';
import { chainKit } from './chain-kit.js';
import { jigsawKit } from './jigsaw-kit.js';
import { labelParts } from './set-labels.js';
import { trailKit } from './trail-kit.js';

const MOST_SETS = 100;
const HIGHEST_NUMBER = 999;
const LONGEST_LABEL = 40;
/** The page data of a kit. Refuses an unknown document or paper, no sets or too many, and numbers that cannot be printed. */
export function composeKit(request: KitRequest, covers: Coverage): Result<Composed> {
  const refusal = checkRequest(request);
  if (refusal) return refusal;
  if (request.activity === 'trail') return compose(request, trailKit, covers);
  if (request.activity === 'jigsaw') return compose(request, jigsawKit, covers);
  return compose(request, chainKit, covers);
}

type RequestFor<T> = Omit<KitRequest, 'sets'> & { readonly sets: readonly KitSet<T>[] };

function compose<T>(request: RequestFor<T>, kit: ActivityKit<T>, covers: Coverage): Result<Composed> {
  const { document, sets, paper, options } = request;
  const documents = documentsOf(kit);
  if (!documents.includes(document)) {
    return refuse(
      'print.document',
      `A ${kit.name.toLowerCase()} has no document called \u201c${document}\u201d.`,
      `Choose one of: ${documents.join(', ')}.`,
    );
  }
  const names = new NamePrinter(covers);
  const composer: KitComposer<T> = { sets, paper, options, names };
  return {
    ok: true,
    value: {
      pieces: inPieces(`${kit.name}: ${setsInWords(sets)}`, options.locale, allParts(), covers),
      warnings: () => names.warnings(),
      isDuplex: options.backs !== false && (document === 'kit' || document === kit.loose),
    },
  };

  function* allParts(): Generator<PartData> {
    // Sheets that are cut keep their other side free, or the key would be cut with them.
    const back = document === 'kit' && options.backs !== false ? { kind: 'blank', pages: 1 } : null;
    if (document === 'kit' || document === kit.loose) yield* kit.looseParts(composer);
    if (document === 'kit' || document === 'labels') yield* backed(labelParts(composer, kit), back);
    if (document === 'kit' || document === 'pupil') yield* backed(kit.pupilParts(composer), back);
    if (document === 'kit' || document === 'key') yield* kit.keyParts(composer);
  }
}

function* backed(
  parts: Iterable<PartData>,
  back: { readonly kind: string; readonly pages: number } | null,
): Generator<PartData> {
  for (const part of parts) {
    yield part;
    if (back) yield { ...back, paper: part.paper };
  }
}

function documentsOf(kit: { readonly loose: KitDocument }): readonly KitDocument[] {
  return [kit.loose, 'labels', 'pupil', 'key', 'kit'];
}

function checkRequest({ document, sets, paper, options }: KitRequest): ReturnType<typeof refuse> | null {
  const order = problemWithDocument(document, KIT_DOCUMENTS) ?? problemWithPaper(paper);
  if (order) return order;
  if (sets.length === 0) return refuse('print.empty', 'There is no set to print.', 'Make a set first.');
  if (sets.length > MOST_SETS)
    return refuse(
      'print.sets',
      `${sets.length} sets cannot be printed in one go.`,
      `Print up to ${MOST_SETS} at a time.`,
    );
  const numbers = sets.map(({ number }) => number);
  const wrong = numbers.find((n) => !Number.isInteger(n) || n < 1 || n > HIGHEST_NUMBER);
  if (wrong !== undefined)
    return refuse(
      'print.set-number',
      `A set cannot have the number ${wrong}.`,
      `Number sets from 1 to ${HIGHEST_NUMBER}.`,
    );
  const twice = numbers.find((n, at) => numbers.indexOf(n) !== at);
  if (twice !== undefined)
    return refuse('print.set-number', `Two sets have the number ${twice}.`, 'Give each its own number.');
  const long = sets.find(({ label }) => (label?.length ?? 0) > LONGEST_LABEL);
  if (long)
    return refuse(
      'print.label',
      `The label of set ${long.number} is too long for a small piece.`,
      `Use up to ${LONGEST_LABEL} characters.`,
    );
  if (options.cutting !== undefined && !CUTTINGS.includes(options.cutting))
    return refuse(
      'print.cutting',
      `Sheets cannot be cut \u201c${options.cutting}\u201d.`,
      `Choose ${CUTTINGS.join(' or ')}.`,
    );
  return problemWithCopies(options.copies);
}
