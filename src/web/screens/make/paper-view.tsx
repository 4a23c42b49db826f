// The sets on paper: what to print, on what, and the very pages.
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { FILE_PATHS } from '#api/endpoints.js';
import type { KitDocument, KitOrder } from '#api/kits.js';
import { call } from '../../app/client.js';
import { libraryQuery, stateQuery } from '../../app/queries.js';
import { Check } from '../../parts/check.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { PaperPreview } from '../../parts/paper-preview.js';
import { kitChoices } from './kit-choices.js';
import styles from './make.module.css';
import { nextNumbers, usualBand } from './set-numbers.js';
import type { Activity } from './worker/messages.js';

interface Props {
  readonly classId: string;
  /** The sets to print, all of one kind. */
  readonly activities: readonly [Activity, ...Activity[]];
  /** False while some are still being made: then the pages of before stay, and nothing can be printed. */
  readonly isReady?: boolean;
  /** Changes whenever the activities do. */
  readonly version: string;
  /** The numbers under which these sets were kept; null when they are not kept. */
  readonly keptNumbers: readonly number[] | null;
}

type Options = Omit<KitOrder, 'classId' | 'sets' | 'document'>;

const PAPERS = ['A4', 'A3', 'Letter'] as const;

export function PaperView({ classId, activities, isReady = true, version, keptNumbers }: Props) {
  const { data: state } = useQuery(stateQuery);
  const { data: shelf } = useQuery(libraryQuery(classId));
  const [document, setDocument] = useState<KitDocument>('kit');
  const [changes, setChanges] = useState<Partial<Options>>({});
  const [{ kind, years }] = activities;
  const count = activities.length;
  const choices = kitChoices(kind);
  const choice = choices.find(({ id }) => id === document) ?? choices[0];
  if (!state || !shelf) return <p className={styles.waiting}>Setting the pages…</p>;
  const options: Options = {
    paper: state.settings.paper,
    backs: true,
    cutting: 'by sheet',
    names: false,
    lowInk: false,
    largePrint: false,
    ...changes,
  };
  const numbers = keptNumbers ?? nextNumbers(shelf.sets, kind, usualBand(years), count);
  const order: KitOrder = {
    ...options,
    classId,
    document: choice.id,
    sets: activities.map((activity, at) => ({ number: numbers[at] ?? at + 1, activity })),
  };
  const change = (next: Partial<Options>) => setChanges({ ...changes, ...next });
  const hasLoose = choice.id === 'kit' || choice.id === choices[1]?.id;
  return (
    <div className={styles.paper}>
      <ChoiceRow
        label="What to print"
        choices={choices}
        chosen={choice.id}
        onChoose={(id) => setDocument(choices.find((one) => one.id === id)?.id ?? 'kit')}
      />
      <p className={styles.tried}>{choice.about}</p>
      <div className={styles.options}>
        <ChoiceRow
          label="Paper"
          choices={PAPERS.map((id) => ({ id, label: id }))}
          chosen={options.paper}
          onChoose={(id) => change({ paper: PAPERS.find((paper) => paper === id) ?? 'A4' })}
        />
        <div className={styles.checks}>
          {hasLoose && (
            <Check isSelected={options.backs} onChange={(backs) => change({ backs })}>
              Set numbers on the back
            </Check>
          )}
          {hasLoose && kind === 'chain' && count > 1 && (
            <Check
              isSelected={options.cutting === 'by stack'}
              onChange={(isStack) => change({ cutting: isStack ? 'by stack' : 'by sheet' })}
            >
              Cut all sets as one stack
            </Check>
          )}
          {(choice.id === 'kit' || choice.id === 'labels') && (
            <Check isSelected={options.names} onChange={(names) => change({ names })}>
              Names on the tags
            </Check>
          )}
          <Check isSelected={options.lowInk} onChange={(lowInk) => change({ lowInk })}>
            Less ink
          </Check>
          <Check isSelected={options.largePrint} onChange={(largePrint) => change({ largePrint })}>
            Large print
          </Check>
        </div>
      </div>
      <p className={styles.care}>
        An adult laminates and cuts; follow your school’s rules for laminators and blades. Small pieces are
        not for children under three.
        {options.backs && hasLoose && ' Print on both sides, flipped on the long edge.'}
      </p>
      <PaperPreview
        orderKey={['kit', classId, version, numbers, choice.id, options]}
        load={() => call('previewKit', {}, order)}
        path={FILE_PATHS.kits}
        order={order}
        paper={options.paper}
        fileName={`afterbell-${kind}-${choice.id}.pdf`}
        isReady={isReady}
      />
    </div>
  );
}
