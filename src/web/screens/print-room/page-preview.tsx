// The pages exactly as they will be printed, and the way to the printer.
import { keepPreviousData, useMutation, useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { PrintOrder } from '#api/print.js';
import { FILE_PATHS } from '#api/endpoints.js';
import { call, send, sentencesOf } from '../../app/client.js';
import { Button } from '../../parts/button.js';
import { Notice } from '../../parts/notice.js';
import styles from './print-room.module.css';

export function PagePreview({ order }: { readonly order: PrintOrder }) {
  const preview = useQuery({
    queryKey: ['preview', order],
    queryFn: () => call('previewPrint', {}, order),
    placeholderData: keepPreviousData,
  });
  const print = useMutation({ mutationFn: (act: 'print' | 'save') => printPdf(order, act) });
  const failure = preview.error ?? print.error;
  const pages = preview.data?.pages ?? [];
  return (
    <section className={styles.preview} aria-label="Pages">
      <div className={styles.bar}>
        <p role="status">
          {preview.data
            ? `${preview.data.pageCount} ${preview.data.pageCount === 1 ? 'page' : 'pages'} on ${order.paper}. Print at 100 %.`
            : 'Setting the pages…'}
        </p>
        <div className={styles.barButtons}>
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

/** Fetches the PDF and hands it to the browser's own print dialog, or saves it. */
async function printPdf(order: PrintOrder, act: 'print' | 'save'): Promise<void> {
  const response = await send(FILE_PATHS.print, {
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
  link.download = `afterbell-${order.document}.pdf`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
