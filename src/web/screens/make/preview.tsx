// What was made: its proof in a sentence, its pieces, its questions.
import { useState } from 'react';
import type { SkillChoice } from '#api/make.js';
import { Button } from '../../parts/button.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { Notice } from '../../parts/notice.js';
import { ChainView } from './chain-view.js';
import styles from './make.module.css';
import { QuestionList } from './question-list.js';
import type { Maker } from './use-maker.js';
import type { Wish } from './wish.js';
import { proofWords, titleOf } from './words.js';
import type { Activity } from './worker/messages.js';

interface Props {
  readonly wish: Wish;
  readonly maker: Maker;
  readonly skills: readonly SkillChoice[];
  readonly onAnother: () => void;
}

const VIEWS = [
  { id: 'pieces', label: 'Pieces' },
  { id: 'questions', label: 'Questions and answers' },
] as const;
type View = (typeof VIEWS)[number]['id'];

export function Preview({ wish, maker, skills, onAnother }: Props) {
  const [view, setView] = useState<View>('pieces');
  const [wanted, setWanted] = useState(0);
  const { sets, refusal, isWorking, isOld, swapRefusal } = maker;
  const at = Math.min(wanted, Math.max(0, sets.length - 1));
  const activity = sets[at]?.activity;
  return (
    <section className={styles.preview} aria-label="Preview">
      <div className={styles.bar}>
        <ChoiceRow
          label="Show"
          choices={VIEWS}
          chosen={view}
          onChoose={(id) => setView(VIEWS.find((one) => one.id === id)?.id ?? 'pieces')}
        />
        <div className={styles.barButtons}>
          {maker.takeBack && <Button onPress={maker.takeBack}>Take the swap back</Button>}
          <Button onPress={onAnother}>Make another</Button>
        </div>
      </div>
      {refusal && (
        <Notice tone="look" title={refusal.message}>
          {refusal.hint}
        </Notice>
      )}
      {swapRefusal && (
        <Notice tone="look" title={swapRefusal.message}>
          {swapRefusal.hint}
        </Notice>
      )}
      {activity && (
        <div className={styles.made} aria-busy={isOld}>
          <Told activity={activity} />
          {wish.count > 1 && <Pager at={at} made={sets.length} count={wish.count} onTurn={setWanted} />}
          {view === 'pieces' && <Pieces activity={activity} />}
          {view === 'questions' && (
            <QuestionList activity={activity} skills={skills} onSwap={(place) => maker.swap(at, place)} />
          )}
          <p className={styles.seed}>
            Seed {wish.seed}: the same choices with this number make the same{' '}
            {wish.count > 1 ? 'sets' : 'set'} again.
          </p>
        </div>
      )}
      {!activity && isWorking && <p className={styles.waiting}>Making it…</p>}
    </section>
  );
}

function Told({ activity }: { readonly activity: Activity }) {
  const { promise, tried } = proofWords(activity);
  return (
    <div className={styles.told} role="status">
      <h2 className={styles.name}>{titleOf(activity)}</h2>
      <p className={styles.promise}>
        <svg viewBox="0 0 24 24" aria-hidden="true">
          <path d="M12 2.5 20 6v6c0 5-3.4 8.300-8 9.500-4.600-1.200-8-4.500-8-9.500V6z" />
          <path d="M8 12.200 11 15l5-6" />
        </svg>
        <strong>{promise}</strong>
      </p>
      <p className={styles.tried}>{tried}</p>
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

function Pieces({ activity }: { readonly activity: Activity }) {
  switch (activity.kind) {
    case 'chain':
      return <ChainView chain={activity} />;
    case 'trail':
      return null;
  }
}
