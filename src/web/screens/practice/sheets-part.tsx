// A row a child: level, today's sheet, the count by keyboard, circled questions, and a suggestion where there is one.
import { useState } from 'react';
import { FILE_PATHS } from '#api/endpoints.js';
import type { TimedView } from '#api/timed-room.js';
import { call, sentencesOf } from '../../app/client.js';
import { Button } from '../../parts/button.js';
import { Notice } from '../../parts/notice.js';
import { printPdf } from '../../parts/paper-preview.js';
import { ChildDialog } from './child-dialog.js';
import { ChildRow } from './child-row.js';
import { CircleDialog } from './circle-dialog.js';
import styles from './practice.module.css';
import type { Act } from './practice-screen.js';
import { SheetFinder } from './sheet-finder.js';

const PAPERS = [
  { id: 'pupil', label: 'Sheets' },
  { id: 'key', label: 'Keys' },
  { id: 'cover', label: 'Folded records' },
  { id: 'spares', label: 'Copy list' },
] as const;

interface Props {
  readonly classId: string;
  readonly view: TimedView;
  readonly act: Act;
}

export function SheetsPart({ classId, view, act }: Props) {
  const { date, children } = view;
  const [circling, setCircling] = useState<string | null>(null);
  const [looking, setLooking] = useState<string | null>(null);
  const [clock, setClock] = useState<'timed' | 'untimed'>('timed');
  const [printFault, setPrintFault] = useState<{ message: string; hint: string } | null>(null);
  const out = children.filter(({ sheet }) => sheet !== null);
  const counted = out.filter(({ sheet }) => sheet?.outcome);
  const child = (id: string | null) => children.find((one) => one.id === id);
  const circled = child(circling);
  const looked = child(looking);

  const print = async (document: (typeof PAPERS)[number]['id']) => {
    try {
      setPrintFault(null);
      await printPdf(
        FILE_PATHS.timed,
        { classId, date, document },
        `timed-practice-${document}-${date}.pdf`,
        'print',
      );
    } catch (fault) {
      setPrintFault(sentencesOf(fault));
    }
  };

  return (
    <section className={styles.part} aria-label="Sheets and counts">
      <div className={styles.bar}>
        <p className={styles.soft} role="status">
          {out.length === 0
            ? 'No sheets are handed out for this day yet.'
            : `${out.length} ${out.length === 1 ? 'child has' : 'children have'} a sheet, ${counted.length} counted.`}
        </p>
        {out.length > 0 && <SheetFinder />}
        <div className={styles.acts}>
          <Button
            weight={out.length === 0 ? 'main' : 'plain'}
            onPress={() =>
              act(() => call('handOutTimed', { classId }, { date }), 'The sheets are ready to print.')
            }
          >
            {out.length === 0 ? 'Prepare the sheets' : 'Prepare again'}
          </Button>
          {out.length > 0 &&
            PAPERS.map(({ id, label }) => (
              <Button key={id} weight={id === 'pupil' ? 'main' : 'plain'} onPress={() => void print(id)}>
                {id === 'pupil' ? 'Print the sheets' : label}
              </Button>
            ))}
        </div>
      </div>
      {printFault && (
        <Notice tone="look" title={printFault.message}>
          {printFault.hint}
        </Notice>
      )}
      {out.length > 0 && (
        <label className={styles.clockChoice}>
          <input
            type="checkbox"
            checked={clock === 'untimed'}
            onChange={(event) => setClock(event.target.checked ? 'untimed' : 'timed')}
          />
          Today was without a clock
        </label>
      )}
      <table className={styles.table}>
        <caption className="unseen">Timed practice of the class</caption>
        <thead>
          <tr>
            <th scope="col">Child</th>
            <th scope="col">Level</th>
            <th scope="col">Form</th>
            <th scope="col">Done</th>
            <th scope="col">Circled</th>
            <th scope="col">To put right</th>
            <th scope="col">Best so far</th>
            <th scope="col">Next step</th>
          </tr>
        </thead>
        <tbody>
          {children.map((one) => (
            <ChildRow
              key={`${date}/${one.id}`}
              child={one}
              view={view}
              isTimed={clock === 'timed'}
              onMove={(levelId, said) =>
                act(() => call('moveLevel', { classId, childId: one.id }, { date, levelId }), said)
              }
              onUndoMove={() =>
                act(
                  () => call('undoLevel', { classId, childId: one.id }, { date }),
                  `${one.shownAs} is back on the level before.`,
                )
              }
              onRecord={(outcome) =>
                act(
                  () =>
                    call(
                      'recordTimed',
                      { classId },
                      { date, entries: [{ sheetId: one.sheet?.id ?? '', outcome }] },
                    ),
                  `${one.shownAs}: ${outcome.attempted} done, ${outcome.wrong.length} circled.`,
                )
              }
              onUndo={() =>
                act(
                  () => call('undoTimed', { classId, sheetId: one.sheet?.id ?? '' }, { date }),
                  `The last count of ${one.shownAs} is taken back.`,
                )
              }
              onCircle={() => setCircling(one.id)}
              onLook={() => setLooking(one.id)}
            />
          ))}
        </tbody>
      </table>
      {circled?.sheet && (
        <CircleDialog
          child={circled}
          sheet={circled.sheet}
          form={view.forms.find(({ key }) => key === circled.sheet?.formKey) ?? null}
          minutes={clock === 'timed' ? circled.sheet.minutes : null}
          onClose={() => setCircling(null)}
          onRecord={(outcome) => {
            setCircling(null);
            act(
              () =>
                call(
                  'recordTimed',
                  { classId },
                  { date, entries: [{ sheetId: circled.sheet?.id ?? '', outcome }] },
                ),
              `${circled.shownAs}: ${outcome.attempted} done, ${outcome.wrong.length} circled.`,
            );
          }}
        />
      )}
      {looked && <ChildDialog child={looked} ladder={view.ladder} onClose={() => setLooking(null)} />}
    </section>
  );
}
