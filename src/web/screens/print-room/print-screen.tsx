// The print room: choose a document, see the very pages, print them.
import { useQuery } from '@tanstack/react-query';
import { useParams, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import type { DocumentName, PrintOrder } from '#api/print.js';
import { sentencesOf } from '../../app/client.js';
import { stateQuery, todayQuery } from '../../app/queries.js';
import { useDay } from '../../app/use-day.js';
import { useWords } from '../../app/use-words.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { Notice } from '../../parts/notice.js';
import { DOCUMENT_CHOICES, sheetIdsFor } from './documents.js';
import { OrderForm, type OrderOptions } from './order-form.js';
import { PagePreview } from './page-preview.js';
import styles from './print-room.module.css';

export function PrintScreen() {
  const { classId } = useParams({ from: '/class/$classId/print' });
  const date = useDay(useSearch({ from: '/class/$classId/print' }).date);
  const { data: state } = useQuery(stateQuery);
  const words = useWords();
  const day = useQuery({ ...todayQuery(classId, date ?? ''), enabled: date !== null });
  const [document, setDocument] = useState<DocumentName>('kit');
  const [changes, setChanges] = useState<Partial<OrderOptions>>({});

  if (day.error) {
    const { message, hint } = sentencesOf(day.error);
    return (
      <Notice tone="look" title={message}>
        {hint}
      </Notice>
    );
  }
  if (!day.data || !state) return <p>Looking up the day’s boards…</p>;
  const { paper, slipsPerPage } = state.settings;
  const options: OrderOptions = {
    paper,
    tiled: false,
    perPage: slipsPerPage,
    names: false,
    lowInk: false,
    largePrint: false,
    boards: 'class',
    ...changes,
  };
  const { boards, ...rest } = options;
  const choice = DOCUMENT_CHOICES.find(({ id }) => id === document) ?? DOCUMENT_CHOICES[0];
  const order: PrintOrder = { ...rest, document, sheetIds: sheetIdsFor(document, boards, day.data.sheets) };
  const hasYears = day.data.sheets.some(({ group }) => group !== 'class');
  return (
    <div className={styles.screen}>
      <div className={styles.side}>
        <h1 className={styles.title}>Print room</h1>
        <p className={styles.day}>
          {words.longDate(day.data.date)}, number {day.data.number}
        </p>
        <ChoiceRow
          label="What to print"
          choices={DOCUMENT_CHOICES}
          chosen={document}
          onChoose={(id) => {
            const chosen = DOCUMENT_CHOICES.find((one) => one.id === id);
            if (chosen) setDocument(chosen.id);
          }}
        />
        <p className={styles.about}>{choice.about}</p>
        <OrderForm
          document={document}
          options={options}
          hasYears={hasYears}
          onChange={(next) => setChanges({ ...changes, ...next })}
        />
      </div>
      <PagePreview order={order} />
    </div>
  );
}
