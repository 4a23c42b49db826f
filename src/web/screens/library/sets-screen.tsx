// Sets: who has which printed set today, and what is on the shelf.
import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { SET_KINDS } from '#engine/planning/set-shelf.js';
import { sentencesOf } from '../../app/client.js';
import { libraryQuery } from '../../app/queries.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { Notice } from '../../parts/notice.js';
import styles from './library.module.css';
import { RotaPart } from './rota-part.js';
import { KIND_WORDS } from './set-words.js';
import { ShelfPart } from './shelf-part.js';

const VIEWS = [
  { id: 'rota', label: 'Today’s rota' },
  { id: 'shelf', label: 'The shelf' },
] as const;

export function SetsScreen() {
  const { classId } = useParams({ from: '/class/$classId/sets' });
  const search = useSearch({ from: '/class/$classId/sets' });
  const navigate = useNavigate();
  const library = useQuery(libraryQuery(classId));
  const all = library.data?.sets ?? [];
  // The kind that is in use comes first, unless another was chosen.
  const kind =
    search.kind ??
    SET_KINDS.find((one) => all.some((set) => set.kind === one && set.nextStep === null)) ??
    SET_KINDS.find((one) => all.some((set) => set.kind === one)) ??
    'chain';
  const sets = all.filter((set) => set.kind === kind);
  const view = search.view ?? (sets.some(({ nextStep }) => nextStep === null) ? 'rota' : 'shelf');
  const open = (next: Partial<typeof search>) =>
    void navigate({
      to: '/class/$classId/sets',
      params: { classId },
      search: { ...search, ...next },
      replace: true,
    });
  return (
    <div className={styles.screen}>
      <div className={styles.head}>
        <h1 className={styles.title}>Sets</h1>
        <ChoiceRow
          label="Kind of set"
          choices={SET_KINDS.map((id) => ({
            id,
            label: KIND_WORDS[id].many.replace(/^./, (first) => first.toUpperCase()),
          }))}
          chosen={kind}
          onChoose={(id) => open({ kind: SET_KINDS.find((one) => one === id) })}
        />
        <ChoiceRow
          label="View"
          choices={VIEWS}
          chosen={view}
          onChoose={(id) => open({ view: id === 'rota' ? 'rota' : 'shelf' })}
        />
      </div>
      {library.error && (
        <Notice tone="look" title={sentencesOf(library.error).message}>
          {sentencesOf(library.error).hint}
        </Notice>
      )}
      {!library.data && !library.error && <p className={styles.waiting}>Looking along the shelf…</p>}
      {library.data &&
        (view === 'rota' ? (
          <RotaPart
            key={kind}
            classId={classId}
            kind={kind}
            sets={sets}
            onShelf={() => open({ kind, view: 'shelf' })}
          />
        ) : (
          <ShelfPart key={kind} classId={classId} kind={kind} sets={sets} />
        ))}
    </div>
  );
}
