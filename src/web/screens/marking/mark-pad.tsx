// Beside the grid: what the focused cell says, and every mark as a button, for mouse and touch.
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Form, Input, Label, TextField } from 'react-aria-components';
import type { Rung } from '#engine/activities/board/board.js';
import { mistakeHelpQuery } from '../../app/queries.js';
import { Button } from '../../parts/button.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { stateInWords } from './announce.js';
import { CellGlyph } from './cell-glyph.js';
import type { Cell, DeskView, Marked, MarkingDesk } from './marking-desk.js';
import shared from './marking.module.css';
import styles from './mark-pad.module.css';
import { keepOrder } from './use-desk.js';

interface Props {
  readonly rung: Rung;
  readonly child: Marked;
  readonly cell: Cell;
  readonly view: DeskView;
  readonly desk: MarkingDesk;
}

export function MarkPad({ rung: { rung }, child, cell, view, desk }: Props) {
  const { data: helpWith } = useQuery(mistakeHelpQuery);
  return (
    <aside className={styles.pad} aria-label="The focused mark">
      <div className={styles.padHead}>
        <h2 className={styles.padTitle}>
          {child.shownAs}, question {rung}
        </h2>
        <p className={styles.padState}>
          {child.absent ? 'Away on this day' : sentenceCase(stateInWords(cell))}
        </p>
      </div>
      {cell.findings.length > 0 && (
        <div className={styles.finding}>
          {cell.findings.map(({ misconception, does }) => (
            <p key={misconception}>
              <strong>It looks as if the child {does}.</strong> {helpWith?.[misconception]}
            </p>
          ))}
          <p className={styles.caution}>A prompt to look, not a diagnosis.</p>
        </div>
      )}
      <div className={styles.padMarks} role="group" aria-label="Mark this question">
        {(['right', 'wrong', 'blank'] as const).map((state) => (
          <Button
            key={state}
            preventFocusOnPress
            isDisabled={child.absent}
            onPress={() => desk.markHere({ state, typed: '' })}
          >
            <CellGlyph cell={{ state, typed: '', findings: [] }} typing={null} />
            {sentenceCase(state)}
          </Button>
        ))}
        <Button
          preventFocusOnPress
          isDisabled={child.absent || cell.state === null}
          onPress={() => desk.markHere({ state: null, typed: '' })}
        >
          Open again
        </Button>
      </div>
      <WrittenForm key={`${child.id}/${rung}`} isDisabled={child.absent} desk={desk} />
      <div className={styles.padSlip} role="group" aria-label="The whole slip">
        <Button preventFocusOnPress isDisabled={child.absent} onPress={() => desk.fillHere('right')}>
          All open ones right
        </Button>
        <Button preventFocusOnPress isDisabled={child.absent} onPress={() => desk.fillHere('blank')}>
          Blank from here on
        </Button>
        <Button preventFocusOnPress onPress={() => desk.toggleAbsent()}>
          {child.absent ? `${child.shownAs} was here` : `${child.shownAs} was away`}
        </Button>
        <span className={styles.steps}>
          <Button preventFocusOnPress isDisabled={!view.canUndo} onPress={() => desk.undo()}>
            Take back
          </Button>
          <Button preventFocusOnPress isDisabled={!view.canRedo} onPress={() => desk.redo()}>
            Bring back
          </Button>
        </span>
      </div>
      <div className={styles.order}>
        <p id="slip-order">Go along a slip from</p>
        <ChoiceRow
          label="Go along a slip from"
          choices={[
            { id: 'first-to-last', label: 'question 1' },
            { id: 'last-to-first', label: 'the last one' },
          ]}
          chosen={view.order}
          onChoose={(id) => {
            const order = id === 'last-to-first' ? id : 'first-to-last';
            keepOrder(order);
            desk.setOrder(order);
          }}
        />
        <p className={styles.hint}>
          From the last one takes fewer keys: mark what is not right, then Enter makes the others right.
        </p>
      </div>
    </aside>
  );
}

function WrittenForm({ isDisabled, desk }: { readonly isDisabled: boolean; readonly desk: MarkingDesk }) {
  const [text, setText] = useState('');
  return (
    <Form
      className={styles.writtenForm ?? ''}
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() !== '') desk.markHere({ state: null, typed: text.trim() });
        setText('');
      }}
    >
      <TextField value={text} onChange={setText} isDisabled={isDisabled} className={shared.field ?? ''}>
        <Label>What the child wrote</Label>
        <Input autoComplete="off" spellCheck="false" maxLength={80} />
      </TextField>
      <Button type="submit" isDisabled={isDisabled}>
        Enter
      </Button>
    </Form>
  );
}

function sentenceCase(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
