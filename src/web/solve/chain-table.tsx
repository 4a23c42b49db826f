// A chain to lay on the screen: loose strips below, the chain above, the last strip large beside them. Nothing but the
// strips themselves says whether it goes well: it ends with Finish and no strip left, or it does not.
import { type CSSProperties, type KeyboardEvent, useRef, useState } from 'react';
import type { Chain } from '#engine/activities/chain/chain.js';
import { MathText } from '../parts/math-text.js';
import { CarriedStrips } from './carried-strips.js';
import { questionHints } from './question-hints.js';
import styles from './chain-table.module.css';
import { laidWords, looseWords, placeWords } from './chain-words.js';
import { FittedFigure } from './fitted-figure.js';
import { beginLine, isLine, layAt, type Line, takeOut } from './line.js';
import { type ChainPlace, placeUnder } from './place-under.js';
import { shuffled } from './shuffled.js';
import { StripFace } from './strip-face.js';
import { TableFrame } from './table-frame.js';
import { useDrag } from './use-drag.js';
import { useFocusOn } from './use-focus-on.js';
import { useHints } from './use-hints.js';
import { useKeptHistory } from './use-kept-history.js';
import { fitStyle, useStripFit } from './use-strip-fit.js';

/** A strip picked up by key or press: shown at its place, laid with Enter. */
interface Held {
  readonly piece: number;
  readonly at: number;
}

interface Props {
  readonly chain: Chain;
  readonly title: string;
  /** Tells these pieces from others in what the browser keeps. */
  readonly name: string;
  readonly onOther: (() => void) | null;
  readonly onLeave: () => void;
}

const FIRST_HINT = { text: 'Which strip says Start? Lay it first.' };
const HOW =
  'Drag a strip to the chain, or press it and press it again where it appears. By key: Tab goes from the chain to the loose ' +
  'strips, arrow keys from strip to strip. Enter picks a strip up, arrow keys then move it along the chain, Enter lays it, ' +
  'Escape puts it back. Delete takes a strip out of the chain.';

export function ChainTable({ chain, title, name, onOther, onLeave }: Props) {
  const { cards, locale } = chain;
  const begin = () => beginLine(chain.printOrder, 0);
  const table = useKeptHistory(name, begin, (kept): kept is Line => isLine(kept, cards.length));
  const line = table.now;
  const [held, setHeld] = useState<Held | null>(null);
  const [said, setSaid] = useState('');
  const [focused, setFocused] = useState<number | null>(null);
  const ground = useRef<HTMLDivElement>(null);
  const fit = useStripFit(ground, cards.length);
  const focus = useFocusOn(ground);
  const focusOn = (piece: number) => focus(`[data-piece="${piece}"]`);

  const lastLaid = line.laid.at(-1);
  const closer = focused !== null && line.laid.includes(focused) ? focused : lastLaid;
  const question = cards[closer ?? -1]?.question ?? null;
  const hints = useHints(
    () => ({
      about: String(closer),
      hints: question ? questionHints(question).map((text) => ({ text })) : [FIRST_HINT],
    }),
    closer,
  );

  const others = (piece: number) => line.laid.filter((one) => one !== piece);
  const lay = (piece: number, at: number) => {
    const next = layAt(line, piece, at);
    const trayAt = line.tray.indexOf(piece);
    focusOn(next.tray[Math.min(trayAt, next.tray.length - 1)] ?? piece);
    table.step(() => next);
    setHeld(null);
    setSaid(laidWords(cards, next, piece));
  };
  const pickUp = (piece: number) => {
    const at = line.laid.includes(piece) ? line.laid.indexOf(piece) : line.laid.length;
    setHeld({ piece, at });
    focusOn(piece);
    setSaid(`In hand. ${placeWords(cards, others(piece), at)}`);
  };
  const putBack = () => {
    if (!held) return;
    focusOn(held.piece);
    setHeld(null);
    setSaid('Put back.');
  };
  const takeAway = (piece: number) => {
    if (!line.laid.includes(piece)) return;
    const next = takeOut(line, piece);
    focusOn(next.laid[Math.min(line.laid.indexOf(piece), next.laid.length - 1)] ?? piece);
    table.step(() => next);
    setHeld(null);
    setSaid(`Taken out. ${looseWords(next.tray.length)}`);
  };
  const moveHeld = (at: number) => {
    if (!held) return;
    const place = Math.max(0, Math.min(at, others(held.piece).length));
    setHeld({ ...held, at: place });
    focusOn(held.piece);
    setSaid(placeWords(cards, others(held.piece), place));
  };

  const onPress = (piece: number) => {
    if (held === null) pickUp(piece);
    else if (held.piece === piece) lay(piece, held.at);
    else if (line.laid.includes(piece)) moveHeld(others(held.piece).indexOf(piece));
    else pickUp(piece);
  };
  const dragging = useDrag<ChainPlace | 'tray'>({
    locate: ({ x, y }) => placeUnder(ground.current, x, y),
    onDrop: ({ piece, over }) => {
      setHeld(null);
      const own = line.laid.indexOf(piece);
      if (over === 'tray') takeAway(piece);
      else if (over) lay(piece, own >= 0 && own < over.at ? over.at - 1 : over.at);
    },
    onPress,
  });
  const dragged = new Set(dragging.drags.map(({ piece }) => piece));

  const onKey = (event: KeyboardEvent, piece: number) => {
    const move = movesOf(event.key, fit?.columns ?? 1);
    if (held) {
      if (event.key === 'Escape') putBack();
      else if (move !== null) moveHeld(held.at + move);
      else return;
    } else if ((event.key === 'Delete' || event.key === 'Backspace') && line.laid.includes(piece))
      takeAway(piece);
    else if (move !== null) {
      const row = line.laid.includes(piece) ? line.laid : line.tray;
      const next = row[Math.max(0, Math.min(row.indexOf(piece) + move, row.length - 1))];
      ground.current?.querySelector<HTMLElement>(`[data-piece="${next}"]`)?.focus();
    } else return;
    event.preventDefault();
  };

  const shown = held ? layAt(line, held.piece, held.at).laid : line.laid;
  const strip = (piece: number, isLaid: boolean, isStop: boolean) => {
    const card = cards[piece];
    if (!card) return null;
    const isHeld = held?.piece === piece;
    return (
      <button
        type="button"
        className={`${styles.strip} ${isHeld ? styles.inHand : ''} ${dragged.has(piece) ? styles.away : ''}`}
        data-piece={piece}
        aria-describedby="how-to-move"
        tabIndex={isStop ? 0 : -1}
        onFocus={() => setFocused(piece)}
        onPointerDown={(event) => dragging.take(event, piece)}
        onClick={(event) => dragging.isEcho(event) || onPress(piece)}
        onKeyDown={(event) => onKey(event, piece)}
      >
        {isHeld && <span className="unseen">In hand: </span>}
        <StripFace card={card} locale={locale} isLaid={isLaid} />
      </button>
    );
  };
  const stopIn = (row: readonly number[], otherwise: number | undefined) =>
    held && row.includes(held.piece)
      ? held.piece
      : focused !== null && row.includes(focused)
        ? focused
        : otherwise;
  const chainStop = stopIn(shown, shown.at(-1));
  const trayStop = stopIn(line.tray, line.tray[0]);
  const loose = line.tray.filter((piece) => piece !== held?.piece || !shown.includes(piece));
  const reading = cards[closer ?? -1];

  return (
    <TableFrame
      title={title}
      how={HOW}
      said={said}
      locale={locale}
      hint={hints.shown}
      hintWidth="max(15rem, 25%)"
      canStepBack={table.canStepBack}
      onStepBack={() => {
        setHeld(null);
        table.stepBack();
        setSaid('The last step is taken back.');
      }}
      onStartAgain={() => {
        setHeld(null);
        table.step(begin);
        setSaid('All strips lie loose again but for Start.');
      }}
      onShuffle={() => {
        setHeld(null);
        table.step((now) => ({ ...now, tray: shuffled(now.tray) }));
        setSaid('The loose strips are mixed.');
      }}
      onHint={hints.next}
      onHideHint={hints.hide}
      onOther={onOther}
      onLeave={onLeave}
    >
      <div className={styles.table} data-table="">
        <section className={styles.reading} aria-label="Read from afar">
          <h2>{closer === lastLaid ? 'The last strip asks' : 'This strip asks'}</h2>
          <p className={styles.question} data-long={(question?.text.length ?? 0) > 48}>
            {question ? <MathText text={question.text} /> : reading ? 'Finish' : 'Which strip comes first?'}
          </p>
          {question?.figure && (
            <FittedFigure figure={question.figure} locale={locale} className={styles.closer} />
          )}
        </section>
        <div
          ref={ground}
          className={styles.ground}
          style={fit ? (fitStyle(fit) as CSSProperties) : undefined}
        >
          <div className={`${styles.row} ${styles.trial}`} data-trial="" aria-hidden="true" inert>
            {cards.map((card) => (
              <span key={card.label} className={styles.strip}>
                <StripFace card={card} locale={locale} isLaid />
              </span>
            ))}
          </div>
          {fit && (
            <>
              <ol className={`${styles.row} ${styles.chain}`} aria-label="The chain" data-chain="">
                {shown.map((piece, at) => (
                  <li key={piece} data-laid={piece} style={{ zIndex: 100 - at, position: 'relative' }}>
                    {strip(piece, true, piece === chainStop)}
                  </li>
                ))}
                {!held && line.tray.length > 0 && <li className={styles.next} aria-hidden="true" />}
              </ol>
              <ul className={`${styles.row} ${styles.tray}`} aria-label="Loose strips" data-tray="">
                {loose.map((piece) => (
                  <li key={piece}>{strip(piece, false, piece === trayStop)}</li>
                ))}
              </ul>
            </>
          )}
        </div>
        {fit && <CarriedStrips chain={chain} fit={fit} drags={dragging.drags} />}
      </div>
    </TableFrame>
  );
}

/** How many places a key moves along rows of so many strips; null for any other key. */
function movesOf(key: string, columns: number): number | null {
  const moves: Readonly<Record<string, number>> = {
    ArrowRight: 1,
    ArrowLeft: -1,
    ArrowDown: columns,
    ArrowUp: -columns,
    Home: -1000,
    End: 1000,
  };
  return moves[key] ?? null;
}
