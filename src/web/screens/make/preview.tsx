// What was made: its proof in a sentence, its pieces, its questions.
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { SkillChoice } from '#api/make.js';
import type { LibrarySet } from '#api/sets.js';
import { Button } from '../../parts/button.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { Notice } from '../../parts/notice.js';
import { solveAddress } from '../../solve/solve-address.js';
import { ChainView } from './chain-view.js';
import { KeepDialog } from './keep-dialog.js';
import styles from './make.module.css';
import { PaperView } from './paper-view.js';
import pieceStyles from './pieces.module.css';
import { PictureView } from './picture-view.js';
import { QuestionList } from './question-list.js';
import type { Maker } from './use-maker.js';
import type { Wish, WishChange } from './wish.js';
import { numbersInWords } from './set-numbers.js';
import { ACTIVITY_WORDS, proofWords, titleOf } from './words.js';
import type { Activity, MadeSet } from './worker/messages.js';

interface Props {
  readonly classId: string;
  readonly wish: Wish;
  readonly maker: Maker;
  readonly skills: readonly SkillChoice[];
  readonly onAnother: () => void;
  /** Takes what a refusal proposes. */
  readonly onMend: (change: WishChange) => void;
}

interface Kept {
  readonly of: readonly MadeSet[];
  readonly numbers: readonly number[];
  readonly shelf: readonly LibrarySet[];
}

const VIEWS = [
  { id: 'pieces', label: 'Pieces' },
  { id: 'questions', label: 'Questions and answers' },
  { id: 'paper', label: 'Paper' },
] as const;
type View = (typeof VIEWS)[number]['id'];

export function Preview({ classId, wish, maker, skills, onAnother, onMend }: Props) {
  const [view, setView] = useState<View>('pieces');
  const [wanted, setWanted] = useState(0);
  const [isKeeping, setIsKeeping] = useState(false);
  const [kept, setKept] = useState<Kept | null>(null);
  const { sets, refusal, isWorking, isOld, swapRefusal } = maker;
  const at = Math.min(wanted, Math.max(0, sets.length - 1));
  const set = sets[at];
  const activity = set?.activity;
  const [first, ...others] = sets.map((one) => one.activity);
  const isWhole = !isWorking && refusal === null && first !== undefined;
  // Kept is what was kept: a swap or another seed makes something new.
  const isKept = kept !== null && kept.of === sets;
  return (
    <section className={styles.preview} aria-label="Preview">
      <div className={`${styles.bar} ${view === 'paper' ? '' : styles.stays}`}>
        <ChoiceRow
          label="Show"
          choices={VIEWS.map(({ id, label }) => ({
            id,
            label: id === 'questions' && wish.activity === 'jigsaw' ? 'A way to solve it' : label,
          }))}
          chosen={view}
          onChoose={(id) => setView(VIEWS.find((one) => one.id === id)?.id ?? 'pieces')}
        />
        <div className={styles.barButtons}>
          {maker.takeBack && <Button onPress={maker.takeBack}>Take the swap back</Button>}
          <Button onPress={onAnother}>Make another</Button>
          <Button onPress={() => setIsKeeping(true)} isDisabled={!isWhole || isKept}>
            {isKept ? 'Kept' : wish.count === 1 ? 'Keep as a set' : 'Keep as sets'}
          </Button>
        </div>
      </div>
      {refusal && (
        <Notice tone="look" title={refusal.message}>
          {refusal.hint}
          {refusal.mends && refusal.mends.length > 0 && (
            <span className={styles.mends}>
              {refusal.mends.map(({ label, change }) => (
                <Button key={label} onPress={() => onMend(change)}>
                  {label}
                </Button>
              ))}
            </span>
          )}
        </Notice>
      )}
      {swapRefusal && (
        <Notice tone="look" title={swapRefusal.message}>
          {swapRefusal.hint}
        </Notice>
      )}
      {isKept && (
        <Notice>
          Kept as {numbersInWords(kept.numbers)} of the {ACTIVITY_WORDS[wish.activity].plural}
          {kept.shelf[0] && `, in box ${kept.shelf[0].box}`}.{' '}
          <Link to="/class/$classId/sets" params={{ classId }}>
            See the shelf
          </Link>
        </Notice>
      )}
      {set && activity && (
        <div className={styles.made} aria-busy={isOld}>
          <div className={styles.head}>
            <Told activity={activity} isShort={view === 'paper'} />
            {/* On the screen a set is made from its wish again, which knows nothing of swaps. */}
            {!maker.takeBack && !isOld && (
              <Link className={styles.try} {...solveAddress(classId, wish, activity.seed)}>
                Try it on the screen
              </Link>
            )}
          </div>
          {wish.count > 1 && view !== 'paper' && (
            <Pager at={at} made={sets.length} count={wish.count} onTurn={setWanted} />
          )}
          {view === 'pieces' && <Pieces {...set} />}
          {view === 'questions' &&
            (set.steps.length > 0 ? (
              <Steps steps={set.steps} />
            ) : (
              <QuestionList activity={activity} skills={skills} onSwap={(place) => maker.swap(at, place)} />
            ))}
          {view === 'paper' && first && refusal === null && (
            <PaperView
              classId={classId}
              activities={[first, ...others]}
              isReady={isWhole}
              version={maker.version}
              keptNumbers={isKept ? kept.numbers : null}
            />
          )}
          <p className={styles.seed}>
            Seed {wish.seed}: the same choices with this number make the same{' '}
            {wish.count > 1 ? 'sets' : 'set'} again.
          </p>
        </div>
      )}
      {isKeeping && isWhole && (
        <KeepDialog
          classId={classId}
          activities={[first, ...others]}
          onKept={(shelf) => setKept({ of: sets, numbers: shelf.map(({ number }) => number), shelf })}
          onClose={() => setIsKeeping(false)}
        />
      )}
      {!activity && isWorking && <p className={styles.waiting}>Making it…</p>}
    </section>
  );
}

function Told({ activity, isShort }: { readonly activity: Activity; readonly isShort: boolean }) {
  const { promise, tried } = proofWords(activity);
  return (
    <div className={styles.told} role="status">
      <h2 className={styles.name}>{titleOf(activity)}</h2>
      <p className={styles.promise}>
        <svg viewBox="0 0 24 24" aria-hidden="true">
          <path d="M12 2.5 20 6v6c0 5-3.4 8.3-8 9.5-4.6-1.2-8-4.5-8-9.5V6z" />
          <path d="M8 12.2 11 15l5-6" />
        </svg>
        <strong>{promise}</strong>
      </p>
      {!isShort && <p className={styles.tried}>{tried}</p>}
    </div>
  );
}

interface PagerProps {
  readonly at: number;
  readonly made: number;
  readonly count: number;
  readonly onTurn: (at: number) => void;
}

function Pager({ at, made, count, onTurn }: PagerProps) {
  return (
    <div className={styles.pager} role="group" aria-label="Sets">
      <Button isDisabled={at === 0} onPress={() => onTurn(at - 1)} aria-label="Set before">
        ‹
      </Button>
      <span>
        Set {at + 1} of {count}
        {made < count && `, ${made} made so far`}
      </span>
      <Button isDisabled={at + 1 >= made} onPress={() => onTurn(at + 1)} aria-label="Next set">
        ›
      </Button>
    </div>
  );
}

function Pieces({ activity, pictures }: MadeSet) {
  return activity.kind === 'chain' ? <ChainView chain={activity} /> : <PictureView pictures={pictures} />;
}

function Steps({ steps }: { readonly steps: readonly string[] }) {
  return (
    <ol className={pieceStyles.steps}>
      {steps.map((step) => (
        <li key={step}>{step}</li>
      ))}
    </ol>
  );
}
