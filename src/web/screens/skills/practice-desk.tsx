// A sheet of practice: the chosen skills, how many questions and copies, and the very pages.
import { useQuery } from '@tanstack/react-query';
import { type RefObject, useState } from 'react';
import { Group, Input, Label, NumberField, Button as AriaButton } from 'react-aria-components';
import { FILE_PATHS } from '#api/endpoints.js';
import type { PracticeOrder } from '#api/print.js';
import type { Skill } from '#engine/skills/skill.js';
import { call } from '../../app/client.js';
import { stateQuery } from '../../app/queries.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { Check } from '../../parts/check.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { PaperPreview } from '../../parts/paper-preview.js';
import styles from './skills.module.css';

interface Props {
  readonly classId: string;
  readonly skills: readonly Skill[];
  readonly headingRef: RefObject<HTMLHeadingElement | null>;
  readonly onBack: () => void;
  readonly onRemove: (id: string) => void;
}

const COUNTS = ['10', '20', '30', '40'];
const PAPERS = ['A4', 'Letter'] as const;

export function PracticeDesk({ classId, skills, headingRef, onBack, onRemove }: Props) {
  const words = useWords();
  const { data: state } = useQuery(stateQuery);
  const [changes, setChanges] = useState<Partial<PracticeOrder>>({});
  const order: PracticeOrder = {
    questions: 20,
    copies: 1,
    seed: 1,
    paper: state?.settings.paper ?? 'A4',
    withKey: true,
    largePrint: false,
    ...changes,
    classId,
    skills: skills.map(({ id }) => id),
  };
  const change = (next: Partial<PracticeOrder>) => setChanges({ ...changes, ...next });
  return (
    <section className={styles.desk} aria-labelledby="desk-title">
      <div className={styles.head}>
        <h2 id="desk-title" ref={headingRef} tabIndex={-1} className={styles.subtitle}>
          Practice sheet
        </h2>
        <div className={styles.acts}>
          <Button weight="quiet" onPress={onBack}>
            Back to the skills
          </Button>
          <Button onPress={() => change({ seed: order.seed + 1 })}>Other questions</Button>
        </div>
      </div>
      <ul className={styles.onSheet} aria-label="On the sheet">
        {skills.map(({ id, title, year }) => (
          <li key={id}>
            <span>
              {title} <small>{words.year(year)}</small>
            </span>
            <Button weight="quiet" aria-label={`Take off: ${title}`} onPress={() => onRemove(id)}>
              Take off
            </Button>
          </li>
        ))}
      </ul>
      <div className={styles.options}>
        <div className={styles.option}>
          <span aria-hidden="true">Questions</span>
          <ChoiceRow
            label="Questions"
            choices={COUNTS.map((id) => ({ id, label: id }))}
            chosen={String(order.questions)}
            onChoose={(id) => change({ questions: Number(id) })}
          />
        </div>
        <NumberField
          className={styles.option ?? ''}
          value={order.copies}
          minValue={1}
          maxValue={60}
          onChange={(copies) => change({ copies: Number.isNaN(copies) ? 1 : copies })}
        >
          <Label>Copies</Label>
          <Group className={styles.stepper ?? ''}>
            <AriaButton slot="decrement">−</AriaButton>
            <Input />
            <AriaButton slot="increment">+</AriaButton>
          </Group>
        </NumberField>
        <div className={styles.option}>
          <span aria-hidden="true">Paper</span>
          <ChoiceRow
            label="Paper"
            choices={PAPERS.map((id) => ({ id, label: id }))}
            chosen={order.paper}
            onChoose={(id) => change({ paper: id === 'Letter' ? 'Letter' : 'A4' })}
          />
        </div>
        <div className={styles.checks}>
          <Check isSelected={order.withKey} onChange={(withKey) => change({ withKey })}>
            A page of answers
          </Check>
          <Check isSelected={order.largePrint} onChange={(largePrint) => change({ largePrint })}>
            Large print
          </Check>
        </div>
      </div>
      {order.copies > 1 && (
        <p className={styles.soft}>
          {order.copies} copies of the sheet will be printed{order.withKey ? ', and one page of answers' : ''}
          .
        </p>
      )}
      <PaperPreview
        orderKey={['practice', { ...order, copies: 1 }]}
        load={() => call('previewPractice', {}, order)}
        path={FILE_PATHS.practice}
        order={order}
        paper={order.paper}
        fileName="afterbell-practice.pdf"
      />
    </section>
  );
}
