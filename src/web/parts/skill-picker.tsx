// Choosing skills from the whole map: type to find, tick as many as are wanted.
import { useMemo, useState } from 'react';
import {
  Button as AriaButton,
  Header,
  Input,
  Label,
  ListBox,
  ListBoxItem,
  ListBoxSection,
  SearchField,
} from 'react-aria-components';
import type { SkillChoice } from '#api/make.js';
import { useWords } from '../app/use-words.js';
import { Button } from './button.js';
import { ChoiceRow } from './choice-row.js';
import { DialogFrame } from './dialog-frame.js';
import { findSkills, MOST_SKILLS } from './find-skills.js';
import styles from './skill-picker.module.css';

interface Props {
  readonly skills: readonly SkillChoice[];
  readonly years: readonly number[];
  readonly chosen: readonly string[];
  readonly onChange: (chosen: string[]) => void;
  readonly onClose: () => void;
}

export function SkillPicker({ skills, years, chosen, onChange, onClose }: Props) {
  const words = useWords();
  const [typed, setTyped] = useState('');
  const [reach, setReach] = useState<'near' | 'all'>('near');
  const near = useMemo(() => findSkills(skills, typed, years), [skills, typed, years]);
  const all = useMemo(() => findSkills(skills, typed, null), [skills, typed]);
  // A word that no skill in reach has is looked for in all years.
  const isWider = reach === 'near' && near.length === 0 && all.length > 0;
  const groups = reach === 'near' && !isWider ? near : all;
  const found = groups.reduce((sum, group) => sum + group.skills.length, 0);
  return (
    <DialogFrame title="Choose skills" onClose={onClose}>
      <div className={styles.head}>
        <SearchField className={styles.search ?? ''} value={typed} onChange={setTyped} autoFocus>
          <Label>Find a skill</Label>
          <div>
            <Input placeholder="clock, doubles, fractions" />
            <AriaButton>Clear</AriaButton>
          </div>
        </SearchField>
        <ChoiceRow
          label="Skills of"
          choices={[
            { id: 'near', label: `${words.years(years)} and just before` },
            { id: 'all', label: 'All' },
          ]}
          chosen={reach}
          onChoose={(id) => setReach(id === 'all' ? 'all' : 'near')}
        />
      </div>
      <ListBox
        aria-label="Skills"
        className={styles.list ?? ''}
        selectionMode="multiple"
        selectionBehavior="toggle"
        selectedKeys={chosen}
        onSelectionChange={(keys) => {
          if (keys !== 'all' && keys.size <= MOST_SKILLS) onChange([...keys].map(String));
        }}
        renderEmptyState={() => (
          <p className={styles.none}>
            No skill is called that here. Try a shorter word{reach === 'near' ? ', or look at all years' : ''}
            .
          </p>
        )}
      >
        {groups.map((group) => (
          <ListBoxSection key={group.id} id={`strand ${group.id}`}>
            <Header className={styles.strand ?? ''}>{group.title}</Header>
            {group.skills.map(({ id, title, year }) => (
              <ListBoxItem key={id} id={id} textValue={title} className={styles.skill ?? ''}>
                <span className={styles.tick} aria-hidden="true">
                  <svg viewBox="0 0 16 16">
                    <path d="M3 8.5 6.5 12 13 4" fill="none" stroke="currentColor" strokeWidth="2.4" />
                  </svg>
                </span>
                <span>{title}</span>
                <small>{words.year(year)}</small>
              </ListBoxItem>
            ))}
          </ListBoxSection>
        ))}
      </ListBox>
      <div className={styles.foot}>
        <p role="status">
          {chosen.length === 0 ? `${found} to choose from` : `${chosen.length} chosen`}
          {isWider && ', all from other years'}
          {chosen.length >= MOST_SKILLS && ', which is as many as one set takes'}
        </p>
        {chosen.length > 0 && (
          <Button weight="quiet" onPress={() => onChange([])}>
            Start over
          </Button>
        )}
        <Button weight="main" onPress={onClose}>
          Done
        </Button>
      </div>
    </DialogFrame>
  );
}
