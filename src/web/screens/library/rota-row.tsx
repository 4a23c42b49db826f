// One child on the rota: the set it has, and the tap that moves it on.
import { ToggleButton } from 'react-aria-components';
import type { RotaChild } from '#api/sets.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import styles from './rota.module.css';
import shared from './library.module.css';
import type { RotaActs } from './rota-part.js';
import { SetTag } from './set-tag.js';

interface Props {
  readonly child: RotaChild;
  readonly date: string;
  readonly acts: RotaActs;
  readonly onChange: () => void;
}

export function RotaRow({ child, date, acts, onChange }: Props) {
  const words = useWords();
  const { shownAs, holds, absent, waiting } = child;
  return (
    <li className={styles.row} data-away={absent || undefined}>
      <span className={styles.name}>{shownAs}</span>
      <span className={styles.has}>
        {holds && <SetTag set={holds} />}
        {absent && <span className={shared.soft}>{holds ? 'keeps it, away today' : 'away today'}</span>}
        {!absent && holds && holds.since !== date && (
          <span className={shared.soft}>since {words.shortDate(holds.since)}</span>
        )}
        {!absent && !holds && <span className={shared.soft}>{waiting ? waiting.message : 'no set yet'}</span>}
      </span>
      <span className={styles.rowActs}>
        {!absent &&
          (holds ? (
            <Button key="tap" aria-label={`Finished, next: ${shownAs}`} onPress={() => acts.finish(child)}>
              Finished, next
            </Button>
          ) : (
            <Button key="tap" aria-label={`Choose a set for ${shownAs}`} onPress={onChange}>
              Choose a set
            </Button>
          ))}
        <ToggleButton
          className={styles.away ?? ''}
          aria-label={`Away: ${shownAs}`}
          isSelected={absent}
          onChange={(away) => acts.setAway(child, away)}
        >
          Away
        </ToggleButton>
        <Button weight="quiet" aria-label={`More for ${shownAs}`} onPress={onChange}>
          More…
        </Button>
      </span>
    </li>
  );
}
