// The way to a skill: words or a code, a year, a strand, and the list of what fits.
import { useEffect, useRef } from 'react';
import {
  Collection,
  Header,
  Input,
  Label,
  ListBox,
  ListBoxItem,
  ListBoxSection,
  SearchField,
} from 'react-aria-components';
import { SCHOOL_YEARS } from '#engine/curriculum/years.js';
import { STRANDS, type StrandId } from '#engine/curriculum/strands.js';
import type { FoundSkills } from '#engine/skills/find-skills.js';
import { SKILLS } from '#engine/skills/map.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import styles from './skills.module.css';

interface Props {
  readonly wanted: { readonly words: string; readonly year: number | null; readonly strand: StrandId | null };
  readonly found: FoundSkills;
  readonly chosen: string | null;
  /** Ids of the skills on the practice sheet. */
  readonly sheet: readonly string[];
  readonly onWords: (words: string) => void;
  readonly onYear: (year: number | null) => void;
  readonly onStrand: (strand: StrandId | null) => void;
  readonly onChoose: (id: string) => void;
  readonly onSheet: () => void;
  readonly onOwn: () => void;
}

export function SkillFinder(props: Props) {
  const { wanted, found, chosen, sheet, onChoose, onSheet } = props;
  const words = useWords();
  // The list draws a row anew only when one of these has changed.
  const shownBy = [words.locale, sheet];
  const strands = STRANDS.map(({ id, title }) => ({
    id,
    title,
    skills: found.skills.filter((skill) => skill.strand === id),
  })).filter(({ skills }) => skills.length > 0);
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // A link on a skill's page chooses too: the list shows where that is.
    if (chosen !== null) list.current?.querySelector('[data-selected]')?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);
  return (
    <section className={styles.finder} aria-labelledby="skills-title">
      <div className={styles.finderHead}>
        <h1 id="skills-title" className={styles.title}>
          Skills
        </h1>
        <Button onPress={props.onOwn}>My questions</Button>
        {sheet.length > 0 && (
          <Button onPress={onSheet}>
            Practice sheet: {sheet.length} {sheet.length === 1 ? 'skill' : 'skills'}
          </Button>
        )}
      </div>
      <SearchField className={styles.field ?? ''} value={wanted.words} onChange={props.onWords}>
        <Label>Words or a curriculum code</Label>
        <Input />
      </SearchField>
      <div className={styles.filters}>
        <label className={styles.field}>
          {words.yearWord}
          <select
            value={wanted.year ?? ''}
            onChange={({ target }) => props.onYear(target.value === '' ? null : Number(target.value))}
          >
            <option value="">All</option>
            {SCHOOL_YEARS.map((year) => (
              <option key={year} value={year}>
                {words.year(year)}
              </option>
            ))}
          </select>
        </label>
        <label className={styles.field}>
          Strand
          <select
            value={wanted.strand ?? ''}
            onChange={({ target }) => props.onStrand(target.value === '' ? null : (target.value as StrandId))}
          >
            <option value="">All</option>
            {STRANDS.map(({ id, title }) => (
              <option key={id} value={id}>
                {title}
              </option>
            ))}
          </select>
        </label>
      </div>
      {found.statement && (
        <p className={styles.statement}>
          <strong>{found.statement.code}</strong> {found.statement.summary}
        </p>
      )}
      <p role="status" className={styles.count}>
        {countInWords(found)}
      </p>
      {found.skills.length > 0 && (
        <ListBox
          ref={list}
          aria-label="Skills found"
          className={styles.list ?? ''}
          selectionMode="single"
          selectionBehavior="toggle"
          disallowEmptySelection
          selectedKeys={chosen === null ? [] : [chosen]}
          onSelectionChange={(keys) => {
            const [first] = keys;
            if (first !== undefined) onChoose(String(first));
          }}
          items={strands}
          dependencies={shownBy}
        >
          {(strand) => (
            <ListBoxSection id={strand.id}>
              <Header className={styles.strand ?? ''}>{strand.title}</Header>
              <Collection items={strand.skills} dependencies={shownBy}>
                {(skill) => (
                  <ListBoxItem id={skill.id} textValue={skill.title} className={styles.item ?? ''}>
                    <span>{skill.title}</span>
                    <small>
                      {sheet.includes(skill.id) ? 'on the sheet, ' : ''}
                      {words.yearShort(skill.year)}
                    </small>
                  </ListBoxItem>
                )}
              </Collection>
            </ListBoxSection>
          )}
        </ListBox>
      )}
    </section>
  );
}

function countInWords({ skills, isByStatement }: FoundSkills): string {
  const count = skills.length;
  if (count === 0) return 'No skill fits. Try another word, or All in the boxes above.';
  if (isByStatement) return `No title has these words, but the curriculum statements of ${count} do.`;
  if (count === SKILLS.length) return `${count} skills`;
  return `${count} of ${SKILLS.length} skills`;
}
