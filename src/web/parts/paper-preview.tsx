// Pages exactly as they will be printed, and the way to the printer.
import { keepPreviousData, useMutation, useQuery } from '@tanstack/react-query';
import { type ReactNode, useMemo } from 'react';
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
  /** More to do with what is on the pages. */
  readonly children?: ReactNode;
}

export function PaperPreview({ orderKey, load, path, order, paper, fileName, children }: Props) {
  const preview = useQuery({
    queryKey: ['preview', ...orderKey],
    queryFn: load,
    placeholderData: keepPreviousData,
  });
  const print = useMutation({
    mutationFn: (act: 'print' | 'save') => printPdf(path, order, fileName, act),
  });
  const failure = preview.error ?? print.error;
  const pages = preview.data?.pages ?? [];
  return (
    <section className={styles.preview} aria-label="Pages">
      <div className={styles.bar}>
        <p role="status">
          {preview.data
            ? `${preview.data.pageCount} ${preview.data.pageCount === 1 ? 'page' : 'pages'} on ${paper}. Print at 100 %.`
            : 'Setting the pages…'}
        </p>
        <div className={styles.barButtons}>
          {children}
          <Button onPress={() => print.mutate('save')} isDisabled={print.isPending}>
            Save as PDF
          </Button>
          <Button weight="main" onPress={() => print.mutate('print')} isDisabled={print.isPending}>
            {print.isPending ? 'Printing…' : 'Print'}
          </Button>
        </div>
      </div>
      {failure && (
        <Notice tone="look" title={sentencesOf(failure).message}>
          {sentencesOf(failure).hint}
        </Notice>
      )}
      {preview.data?.warnings.map((warning) => (
        <Notice key={warning}>{warning}</Notice>
      ))}
      <ol className={styles.pages} aria-busy={preview.isFetching}>
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
