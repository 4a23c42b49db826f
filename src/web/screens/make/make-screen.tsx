// The Make room: wish on the left, the finished thing on the right, made anew at every change.
import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { useEffect, useMemo, useState } from 'react';
import type { MakeView } from '#api/make.js';
import { sentencesOf } from '../../app/client.js';
import { classQuery, makeQuery } from '../../app/queries.js';
import { useWords } from '../../app/use-words.js';
import { Notice } from '../../parts/notice.js';
import styles from './make.module.css';
import { Preview } from './preview.js';
import { useMaker } from './use-maker.js';
import { LARGEST_SEED, wishOf, type WishChange } from './wish.js';
import { WishForm } from './wish-form.js';
import { orderOf } from './order-of.js';
import type { MakeOrder } from './worker/messages.js';

const newSeed = () => 1 + Math.floor(Math.random() * LARGEST_SEED);

export function MakeScreen() {
  const { classId } = useParams({ from: '/class/$classId/make' });
  const room = useQuery(classQuery(classId));
  const view = useQuery(makeQuery(classId));
  const failure = room.error ?? view.error;
  if (failure) {
    const { message, hint } = sentencesOf(failure);
    return (
      <Notice tone="look" title={message}>
        {hint}
      </Notice>
    );
  }
  if (!room.data || !view.data) return <p className={styles.waiting}>Looking up what your class is due…</p>;
  return <Room key={classId} classId={classId} classYears={room.data.years} view={view.data} />;
}

interface RoomProps {
  readonly classId: string;
  readonly classYears: readonly number[];
  readonly view: MakeView;
}

function Room({ classId, classYears, view }: RoomProps) {
  const change = useSearch({ from: '/class/$classId/make' });
  const navigate = useNavigate({ from: '/class/$classId/make' });
  const { locale } = useWords();
  const [firstSeed] = useState(newSeed);
  const wish = wishOf(change, { years: classYears, seed: firstSeed });
  const wishKey = JSON.stringify(wish);
  // A change of the address that leaves the wish as it was must not make everything anew.
  const order = useMemo<MakeOrder | null>(
    () =>
      wish.source === 'chosen' && wish.skills.length === 0
        ? null
        : wish.source === 'own' && view.own.trim() === ''
          ? null
          : orderOf(wish, locale, view),
    // oxlint-disable-next-line react-hooks/exhaustive-deps
    [wishKey, locale, view],
  );
  const maker = useMaker(order);
  // The address names the seed from the first moment, so that the same set is there when the page is opened again.
  useEffect(() => {
    if (change.seed === undefined)
      void navigate({ search: { ...change, seed: firstSeed }, replace: true, resetScroll: false });
  }, [change, firstSeed, navigate]);
  const wishFor = (next: WishChange, isNew = false) =>
    void navigate({
      search: (before) => ({ ...before, seed: wish.seed, ...next }),
      replace: !isNew,
      resetScroll: false,
    });
  return (
    <div className={styles.screen}>
      <div className={styles.side}>
        <h1 className={styles.title}>Make room</h1>
        <WishForm wish={wish} view={view} onChange={wishFor} />
      </div>
      {order === null ? (
        <p className={styles.waiting}>
          {wish.source === 'own'
            ? 'Write some questions of your own first, and it is made of them.'
            : 'Choose at least one skill, and it is made at once.'}
        </p>
      ) : (
        // “Make another” is a step of its own, so that the browser’s Back brings the one before.
        <Preview
          classId={classId}
          wish={wish}
          maker={maker}
          skills={view.skills}
          onMend={wishFor}
          onAnother={() => wishFor({ seed: newSeed() }, true)}
        />
      )}
    </div>
  );
}
