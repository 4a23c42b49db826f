// Pages exactly as they will be printed, and the way to the printer.
import { keepPreviousData, useMutation, useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { PrintPreview } from '#api/print.js';
import { send, sentencesOf } from '../app/client.js';
import { Button } from './button.js';
import { Notice } from './notice.js';
import styles from './paper-preview.module.css';

interface Props {
  /** Changes whenever the order does. */
  readonly orderKey: readonly unknown[];
  readonly load: () => Promise<PrintPreview>;
  /** Where the order is posted for the PDF. */
  readonly path: string;
  readonly order: object;
  readonly paper: string;
  readonly fileName: string;
  /** False while the order is still being put together: the pages of before stay, and nothing can be printed. */
  readonly isReady?: boolean;
}

export function PaperPreview({ orderKey, load, path, order, paper, fileName, isReady = true }: Props) {
  const preview = useQuery({
    queryKey: ['preview', ...orderKey],
    queryFn: load,
    placeholderData: keepPreviousData,
    enabled: isReady,
  });
  const print = useMutation({
    mutationFn: (act: 'print' | 'save') => printPdf(path, order, fileName, act),
  });
  const failure = preview.error ?? print.error;
  const isBusy = print.isPending || !isReady;
  const pages = preview.data?.pages ?? [];
  return (
    <section className={styles.preview} aria-label="Pages">
      <div className={styles.bar}>
        <p role="status">
          {preview.data && isReady
            ? `${pagesInWords(preview.data)} on ${paper}. Print at 100 %.`
            : 'Setting the pages…'}
        </p>
        <div className={styles.barButtons}>
          <Button onPress={() => print.mutate('save')} isDisabled={isBusy}>
            Save as PDF
          </Button>
          <Button weight="main" onPress={() => print.mutate('print')} isDisabled={isBusy}>
            {print.isPending ? 'Printing…' : 'Print'}
          </Button>
        </div>
      </div>
      {failure && (
        <Notice tone="look" title={sentencesOf(failure).message}>
          {sentencesOf(failure).hint}
        </Notice>
      )}
      {preview.data && preview.data.warnings.length > 0 && <Notice>{preview.data.warnings.join(' ')}</Notice>}
      <ol className={styles.pages} aria-busy={preview.isFetching || !isReady}>
        {pages.map((svg, index) => (
          // Pages have no identity but their place.
          // oxlint-disable-next-line react/no-array-index-key
          <li key={index}>
            <Page svg={svg} number={index + 1} />
          </li>
        ))}
      </ol>
    </section>
  );
}

/** "1 page", "12 pages", "More than 40 pages, the first 40 shown," */
function pagesInWords({ pageCount, isCut }: PrintPreview): string {
  if (isCut) return `More than ${pageCount} pages, the first ${pageCount} shown,`;
  return `${pageCount} ${pageCount === 1 ? 'page' : 'pages'}`;
}

function Page({ svg, number }: { readonly svg: string; readonly number: number }) {
  // One object for as long as the page is the same, so that React leaves the drawing alone.
  const html = useMemo(() => ({ __html: svg }), [svg]);
  return (
    <div
      role="img"
      aria-label={`Page ${number} of the print`}
      className={styles.paper}
      dangerouslySetInnerHTML={html}
    />
  );
}

/** Fetches the PDF and hands it to the browser's own print dialog, or saves it. Throws what the server refused. */
export async function printPdf(
  path: string,
  order: object,
  fileName: string,
  act: 'print' | 'save',
): Promise<void> {
  const response = await send(path, {
    method: 'POST',
    body: JSON.stringify(order),
    headers: { 'Content-Type': 'application/json' },
  });
  const url = URL.createObjectURL(await response.blob());
  if (act === 'print' && window.open(url, '_blank')) {
    // The new tab reads the address once it has opened; a minute is ample.
    setTimeout(() => URL.revokeObjectURL(url), 60_000);
    return;
  }
  const link = document.createElement('a');
  link.href = url;
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
