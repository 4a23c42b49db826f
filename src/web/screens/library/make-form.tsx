// Making more sets: how many, for which band, and whether what is due for review comes first.
import { useMutation, useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { type LibrarySet, SetBand } from '#api/sets.js';
import { JIGSAW_LEVELS, type JigsawLevel } from '#engine/activities/jigsaw/jigsaw.js';
import { BANDS, type Band, bandOfYear, yearsOfBand } from '#engine/curriculum/bands.js';
import type { SetKind } from '#engine/planning/set-shelf.js';
import { call, sentencesOf } from '../../app/client.js';
import { classQuery } from '../../app/queries.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { Check } from '../../parts/check.js';
import { Notice } from '../../parts/notice.js';
import styles from './library.module.css';
import { bandTitle, countOf } from './set-words.js';

interface Props {
  readonly classId: string;
  readonly kind: SetKind;
  readonly onMade: () => Promise<unknown>;
}

const COUNTS = [1, 2, 3, 5, 10] as const;

export function MakeForm({ classId, kind, onMade }: Props) {
  const words = useWords();
  const room = useQuery(classQuery(classId));
  const [chosen, setBand] = useState<Band | null>(null);
  // The band of the class, until another is chosen.
  const band = chosen ?? bandOfYear(room.data?.years[0] ?? 3);
  const [count, setCount] = useState(10);
  const [dueFirst, setDueFirst] = useState(false);
  const [level, setLevel] = useState<JigsawLevel>('easy');
  const make = useMutation({
    mutationFn: () =>
      call('makeSets', { classId }, { kind, band, count, ...(kind === 'jigsaw' ? { level } : { dueFirst }) }),
    onSuccess: onMade,
  });
  return (
    <div className={styles.make}>
      <label className={styles.labelled}>
        <span>For</span>
        <select value={band} onChange={(event) => setBand(SetBand.parse(event.target.value))}>
          {BANDS.map((one) => (
            <option key={one} value={one}>
              {bandTitle(one, words)}
            </option>
          ))}
        </select>
      </label>
      <label className={styles.labelled}>
        <span>How many</span>
        <select value={count} onChange={(event) => setCount(Number(event.target.value))}>
          {COUNTS.map((one) => (
            <option key={one} value={one}>
              {one}
            </option>
          ))}
        </select>
      </label>
      {kind === 'jigsaw' && (
        <label className={styles.labelled}>
          <span>How hard</span>
          <select
            value={level}
            onChange={(event) => setLevel(JIGSAW_LEVELS.find((one) => one === event.target.value) ?? level)}
          >
            {JIGSAW_LEVELS.map((one) => (
              <option key={one} value={one}>
                {one}
              </option>
            ))}
          </select>
        </label>
      )}
      {kind !== 'jigsaw' && (
        <Check isSelected={dueFirst} onChange={setDueFirst}>
          What is due for review comes first
        </Check>
      )}
      <Button weight="main" onPress={() => make.mutate()} isDisabled={make.isPending}>
        {make.isPending ? 'Making…' : `Make ${countOf(kind, count)}`}
      </Button>
      <Link
        to="/class/$classId/make"
        params={{ classId }}
        search={{ activity: kind, years: [...yearsOfBand(band)] }}
      >
        Choose more in the Make room
      </Link>
      <p className={styles.made} role="status">
        {make.data && madeSentence(make.data.sets, kind)}
      </p>
      {make.error && (
        <Notice tone="look" title={sentencesOf(make.error).message}>
          {sentencesOf(make.error).hint}
        </Notice>
      )}
    </div>
  );
}

function madeSentence(sets: readonly LibrarySet[], kind: SetKind): string {
  const numbers = sets.map(({ number }) => number);
  const range = numbers.length === 1 ? `${numbers[0]}` : `${numbers[0]} to ${numbers.at(-1)}`;
  return `${countOf(kind, sets.length)} made: ${sets[0]?.band} ${range}.`;
}
