// The frame around the pieces of any activity: the full screen, the strip with its few keys, the hint, and the quiet voice
// that tells a screen reader what lies where.
import { type CSSProperties, type ReactNode, useState } from 'react';
import { Button } from '../parts/button.js';
import type { FigureSpec } from '#engine/figures/figure.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import { MathText } from '../parts/math-text.js';
import { FittedFigure } from './fitted-figure.js';
import styles from './table-frame.module.css';

export interface Hint {
  readonly text: string;
  /** A picture that belongs to the text. */
  readonly figure?: FigureSpec | null;
  /** Read out for the whole room rather than for whoever asked. */
  readonly isForAll?: boolean;
}

interface Props {
  readonly title: string;
  /** How to move pieces, by hand and by key. */
  readonly how: string;
  /** The last thing that happened, for a screen reader. */
  readonly said: string;
  readonly locale: LocaleId;
  readonly hint: Hint | null;
  /** Where the hint lies when it would cover what it is about. */
  readonly isHintHigh?: boolean;
  /** The widest a hint may be, as a length of the styles. */
  readonly hintWidth?: string;
  readonly canStepBack: boolean;
  readonly onStepBack: () => void;
  readonly onStartAgain: () => void;
  readonly onShuffle: () => void;
  readonly onHint: () => void;
  readonly onHideHint: () => void;
  /** Other pieces of the same kind; null for a set of its own. */
  readonly onOther: (() => void) | null;
  readonly onLeave: () => void;
  readonly children: ReactNode;
}

export function TableFrame(props: Props) {
  const { title, how, said, locale, canStepBack, children } = props;
  const [isHowShown, setHowShown] = useState(false);
  const note: Hint | null = isHowShown ? { text: how } : props.hint;
  const putAway = () => {
    setHowShown(false);
    props.onHideHint();
  };
  return (
    <main className={styles.screen}>
      <h1 className="unseen">{title}</h1>
      <p className="unseen" id="how-to-move">
        {how}
      </p>
      <p className="unseen" role="status">
        {said}
      </p>
      {/* A long press with a finger must not bring up the browser's own menu. */}
      <div className={styles.table} onContextMenu={(event) => event.preventDefault()}>
        {children}
      </div>
      <div
        className={styles.hint}
        role="status"
        data-shown={note !== null}
        data-for-all={note?.isForAll}
        data-high={props.isHintHigh}
        style={props.hintWidth ? ({ '--hint-w': props.hintWidth } as CSSProperties) : undefined}
      >
        {note !== null && (
          <>
            {note.figure && <FittedFigure figure={note.figure} locale={locale} className={styles.figure} />}
            <p>
              <MathText text={note.text} />
            </p>
            <Button weight="quiet" onPress={putAway}>
              Put away
            </Button>
          </>
        )}
      </div>
      <footer className={styles.keys}>
        <p className={styles.title} aria-hidden="true">
          {title}
        </p>
        <Button onPress={props.onStepBack} isDisabled={!canStepBack}>
          Undo
        </Button>
        <Button
          onPress={() => {
            setHowShown(false);
            props.onHint();
          }}
        >
          {props.hint === null ? 'A hint' : 'Another hint'}
        </Button>
        <Button onPress={props.onShuffle}>Mix the loose ones</Button>
        <Button onPress={props.onStartAgain}>Start again</Button>
        <Button weight="quiet" onPress={() => setHowShown(!isHowShown)}>
          How to move
        </Button>
        {document.fullscreenEnabled && (
          <Button weight="quiet" onPress={toggleFullScreen}>
            Full screen
          </Button>
        )}
        {props.onOther && (
          <Button weight="quiet" onPress={props.onOther}>
            Other pieces
          </Button>
        )}
        <Button weight="quiet" onPress={props.onLeave}>
          Close
        </Button>
      </footer>
    </main>
  );
}

function toggleFullScreen(): void {
  const change = document.fullscreenElement
    ? document.exitFullscreen()
    : document.documentElement.requestFullscreen();
  // A browser that says no leaves the page as it is.
  change.catch(() => undefined);
}
