// The rota of today: a row for each child, one tap when a set is finished, and the last tap taken back.
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useEffect, useRef, useState } from 'react';
import type { LibrarySet, RotaChild, RotaView } from '#api/sets.js';
import { rotaPaperPath } from '#api/endpoints.js';
import type { SetKind } from '#engine/planning/set-shelf.js';
import { call, sentencesOf } from '../../app/client.js';
import { libraryQuery, rotaQuery } from '../../app/queries.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { Notice } from '../../parts/notice.js';
import { ChangeDialog } from './change-dialog.js';
import styles from './rota.module.css';
import shared from './library.module.css';
import { RotaRow } from './rota-row.js';
import { countOf, KIND_WORDS, setName } from './set-words.js';

interface Props {
  readonly classId: string;
  readonly kind: SetKind;
  readonly sets: readonly LibrarySet[];
  readonly onShelf: () => void;
}

/** What can be done on the rota; each but the last two answers with the rota as it is then. */
export interface RotaActs {
  readonly finish: (child: RotaChild) => void;
  readonly give: (child: RotaChild, setId: string) => void;
  readonly takeBack: (child: RotaChild) => void;
  readonly setAway: (child: RotaChild, absent: boolean) => void;
  readonly setBand: (child: RotaChild, band: RotaChild['band'] | null) => void;
}

/** A second tap on a child so soon is a finger that trembled, not another set that was finished. */
const TWICE_MS = 700;

export function RotaPart({ classId, kind, sets, onShelf }: Props) {
  const words = useWords();
  const queries = useQueryClient();
  const rota = useQuery(rotaQuery(classId, kind));
  const [changing, setChanging] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const tapped = useRef(new Map<string, number>());
  const params = { classId, kind };

  const act = useMutation({
    mutationFn: ({ run }: { readonly run: () => Promise<RotaView>; readonly about: string | null }) => run(),
    onSuccess: async (view, { about }) => {
      queries.setQueryData(rotaQuery(classId, kind).queryKey, view);
      const child = view.children.find(({ id }) => id === about);
      setSaid(child ? sentenceFor(child) : summary(view));
      await queries.invalidateQueries({ queryKey: libraryQuery(classId).queryKey });
    },
    onError: () => setSaid(''),
  });
  const turn = (about: RotaChild | null, run: () => Promise<RotaView>) =>
    act.mutate({ run, about: about?.id ?? null });
  const look = () => call('rota', params, null);
  const acts: RotaActs = {
    finish: (child) => {
      const setId = child.holds?.id;
      if (setId === undefined || performance.now() - (tapped.current.get(child.id) ?? -TWICE_MS) < TWICE_MS)
        return;
      tapped.current.set(child.id, performance.now());
      turn(child, () => call('finishSet', params, { childId: child.id, setId }));
    },
    give: (child, setId) => turn(child, () => call('giveSet', params, { childId: child.id, setId })),
    takeBack: (child) => turn(child, () => call('takeBackSet', params, { childId: child.id })),
    setAway: (child, absent) =>
      turn(child, async () => {
        await call('changeAway', { classId }, { childId: child.id, absent });
        return look();
      }),
    setBand: (child, band) =>
      turn(child, async () => {
        await call('changeBand', { childId: child.id }, { band });
        return look();
      }),
  };
  const undo = () => turn(null, () => call('undoRota', params, {}));
  const view = rota.data;

  const canUndo = view?.canUndo ?? false;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const isTyping =
        event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
      if (event.key !== 'z' || !(event.ctrlKey || event.metaKey) || isTyping || !canUndo) return;
      event.preventDefault();
      undo();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  });

  if (rota.error)
    return (
      <Notice tone="look" title={sentencesOf(rota.error).message}>
        {sentencesOf(rota.error).hint}
      </Notice>
    );
  if (!view) return <p className={shared.waiting}>Looking who has which set…</p>;
  if (view.children.length === 0)
    return (
      <div className={shared.empty}>
        <h2>Nobody is in this class yet</h2>
        <p>
          <Link to="/class/$classId/children" params={{ classId }}>
            Add children
          </Link>{' '}
          first; then every child can have a {KIND_WORDS[kind].one} of its own.
        </p>
      </div>
    );
  const ready = sets.filter(({ nextStep }) => nextStep === null).length;
  if (ready === 0 && view.children.every(({ holds }) => holds === null))
    return (
      <div className={shared.empty}>
        <h2>
          {sets.length === 0
            ? `There are no ${KIND_WORDS[kind].many} yet`
            : `${countOf(kind, sets.length)} made, none in its box yet`}
        </h2>
        <p>
          {sets.length === 0
            ? 'Make some first. Each is printed and cut once, and then goes from child to child for years.'
            : 'Print and cut them, and tick “in its box” on the shelf: then they can be handed out.'}
        </p>
        <Button weight="main" onPress={onShelf}>
          Go to the shelf
        </Button>
      </div>
    );
  const dialogChild = view.children.find(({ id }) => id === changing);
  const canHandOut = view.children.some(({ holds, absent, waiting }) => !holds && !absent && !waiting);
  return (
    <section className={shared.part} aria-label="Rota">
      <div className={shared.bar}>
        <p className={styles.summary}>
          <span className={styles.date}>{words.longDate(view.date)}</span>
          <br />
          {summary(view)}
        </p>
        <div className={shared.acts}>
          <Button onPress={undo} isDisabled={!canUndo} aria-keyshortcuts="Control+z">
            Undo
          </Button>
          <a className={styles.paper} href={rotaPaperPath(classId, kind)} target="_blank" rel="noreferrer">
            Print the rota
          </a>
          <Button
            weight="main"
            isDisabled={!canHandOut}
            onPress={() => turn(null, () => call('handOut', params, {}))}
          >
            Hand out
          </Button>
        </div>
      </div>
      {act.error && (
        <Notice tone="look" title={sentencesOf(act.error).message}>
          {sentencesOf(act.error).hint}
        </Notice>
      )}
      <p className="unseen" role="status">
        {said}
      </p>
      <ul className={styles.rota}>
        {view.children.map((child) => (
          <RotaRow
            key={child.id}
            child={child}
            date={view.date}
            acts={acts}
            onChange={() => setChanging(child.id)}
          />
        ))}
      </ul>
      {dialogChild && (
        <ChangeDialog
          child={dialogChild}
          free={view.free}
          sets={sets}
          acts={acts}
          onClose={() => setChanging(null)}
        />
      )}
    </section>
  );
}

/** "12 children have a set, 2 are waiting, 1 is away." */
function summary({ children }: RotaView): string {
  const away = children.filter(({ absent }) => absent).length;
  const holding = children.filter(({ absent, holds }) => !absent && holds).length;
  const waiting = children.length - away - holding;
  return `${[
    `${holding} ${holding === 1 ? 'child has' : 'children have'} a set`,
    ...(waiting > 0 ? [`${waiting} ${waiting === 1 ? 'has' : 'have'} none`] : []),
    ...(away > 0 ? [`${away} ${away === 1 ? 'is' : 'are'} away`] : []),
  ].join(', ')}.`;
}

function sentenceFor({ shownAs, absent, holds, waiting }: RotaChild): string {
  const set = holds ? `${setName(holds)}, box ${holds.box}` : null;
  if (absent) return `${shownAs} is away${set ? ` and keeps ${set}` : ''}.`;
  if (set) return `${shownAs}: ${set}.`;
  return `${shownAs} has no set. ${waiting ? waiting.message : ''}`.trim();
}
