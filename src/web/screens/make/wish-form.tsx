// Everything that can be wished for, in the order in which a teacher thinks of it.
import { JIGSAW_LEVELS } from '#engine/activities/jigsaw/jigsaw.js';
import { PITCHES } from '#engine/activities/pitch.js';
import type { MakeView } from '#api/make.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { YearPicker } from '../../parts/year-picker.js';
import { ActivityChoice } from './activity-choice.js';
import styles from './choices.module.css';
import { SizeChoice } from './size-choice.js';
import { SourceChoice } from './source-choice.js';
import { RANGES, type Wish, type WishChange } from './wish.js';
import { Count, Row, Words } from './wish-parts.js';
import { ACTIVITY_WORDS, LEVEL_WORDS, PITCH_WORDS } from './words.js';

interface Props {
  readonly wish: Wish;
  readonly view: MakeView;
  readonly onChange: (change: WishChange) => void;
}

export function WishForm({ wish, view, onChange }: Props) {
  const words = useWords();
  return (
    <div className={styles.form}>
      <ActivityChoice
        chosen={wish.activity}
        // Rows and columns mean something else in another activity.
        onChoose={(activity) => onChange({ activity, rows: undefined, columns: undefined })}
      />
      <p className={styles.about}>{ACTIVITY_WORDS[wish.activity].about}</p>
      <Row label={`${words.yearWord} levels`}>
        <YearPicker isShort years={wish.years} onChange={(years) => onChange({ years })} />
      </Row>
      <SourceChoice wish={wish} view={view} onChange={onChange} />
      <SizeChoice wish={wish} onChange={onChange} />
      <Hardness wish={wish} onChange={onChange} />
      <div className={styles.counts}>
        <Count name="count" label="Numbered sets" {...{ wish, onChange }} />
        {wish.count < RANGES.count[1] && (
          <Button onPress={() => onChange({ count: RANGES.count[1] })}>Ten sets</Button>
        )}
      </div>
    </div>
  );
}

function Hardness({ wish, onChange }: Omit<Props, 'view'>) {
  return wish.activity === 'jigsaw' ? (
    <div>
      <Words
        label="How hard"
        ids={JIGSAW_LEVELS}
        words={LEVEL_NAMES}
        chosen={wish.level}
        onChoose={(level) => onChange({ level })}
      />
      <p className={styles.note}>{LEVEL_WORDS[wish.level].about}</p>
    </div>
  ) : (
    <Words
      label="How hard"
      ids={PITCHES}
      words={PITCH_WORDS}
      chosen={wish.pitch}
      onChoose={(pitch) => onChange({ pitch })}
    />
  );
}

const LEVEL_NAMES = {
  easy: LEVEL_WORDS.easy.name,
  middle: LEVEL_WORDS.middle.name,
  hard: LEVEL_WORDS.hard.name,
};
