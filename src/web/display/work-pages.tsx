// The questions while children work: all on one page when that can be read from the back row, else on as few as can.
import { useLayoutEffect, useRef, useState } from 'react';
import type { Board, Rung } from '#engine/activities/board/board.js';
import { yearsName } from '#engine/curriculum/years.js';
import { MINIMUM_RUNGS } from '#engine/learning/counted.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import { FigureView } from '../parts/figure-view.js';
import { MathText } from '../parts/math-text.js';
import styles from './display.module.css';
import { fontSizePx, GOOD_MINUTES, LEAST_MINUTES, type Room } from './legibility.js';
import { balanceTwo, groupPages, packColumns } from './packing.js';

interface Props {
  readonly boards: readonly Board[];
  readonly page: number;
  readonly room: Room;
  /** Everything on one page, however small the letters become. */
  readonly isAllAtOnce: boolean;
  readonly onPages: (pages: number) => void;
}

/** For each board its pages, each of one or two columns of rung indexes; and the letter size for all. */
interface Fit {
  readonly sizePx: number;
  readonly pages: readonly (readonly (readonly number[])[])[][];
}

export function WorkPages({ boards, page, room, isAllAtOnce, onPages }: Props) {
  const ground = useRef<HTMLDivElement>(null);
  const [fit, setFit] = useState<Fit | null>(null);
  const columnsPerBoard = boards.length > 1 ? 1 : 2;

  useLayoutEffect(() => {
    if (!ground.current) return undefined;
    const place = ground.current;
    const lay = () => {
      const found = findFit(place, room, isAllAtOnce, columnsPerBoard);
      setFit(found);
      onPages(Math.max(...found.pages.map((pages) => pages.length)));
    };
    lay();
    const watch = new ResizeObserver(lay);
    watch.observe(place);
    let isHere = true;
    // Letters measured before their face has come are of another width.
    void document.fonts.ready.then(() => isHere && lay());
    return () => {
      isHere = false;
      watch.disconnect();
    };
  }, [room, isAllAtOnce, columnsPerBoard, onPages]);

  return (
    <div ref={ground} className={styles.ground}>
      <div className={styles.trial} aria-hidden="true" inert>
        {boards.map((board) => (
          <ol
            key={keyOf(board)}
            data-trial=""
            style={{ width: `${columnShare(boards.length, columnsPerBoard)}%` }}
          >
            {board.rungs.map((rung) => (
              <RungItem key={rung.rung} rung={rung} locale={board.locale} />
            ))}
          </ol>
        ))}
      </div>
      {fit && (
        <div className={styles.page} style={{ fontSize: `${fit.sizePx}px` }}>
          {boards.map((board, index) => (
            <BoardPage
              key={keyOf(board)}
              board={board}
              columns={fit.pages[index]?.[page] ?? []}
              isBeside={boards.length > 1}
            />
          ))}
        </div>
      )}
    </div>
  );
}

function keyOf(board: Board): string {
  return `${board.years.join()}/${board.side}`;
}

/** Width of a column in per cent of the page's inner width, gaps of 3 % taken off. */
function columnShare(boards: number, columnsPerBoard: number): number {
  const columns = boards * columnsPerBoard;
  return (100 - 3 * (columns - 1)) / columns;
}

function findFit(place: HTMLElement, room: Room, isAllAtOnce: boolean, columnsPerBoard: number): Fit {
  const trial = place.querySelector<HTMLElement>(`.${styles.trial}`);
  const lists = [...place.querySelectorAll<HTMLElement>('[data-trial]')];
  const tall = place.clientHeight - 2 * Math.round(0.012 * window.innerWidth);
  const heightsAt = (sizePx: number) => {
    if (trial) trial.style.fontSize = `${sizePx}px`;
    return lists.map((list) =>
      [...list.children].map((item) => (item as HTMLElement).getBoundingClientRect().height),
    );
  };
  const isOnePage = (sizePx: number) =>
    heightsAt(sizePx).every((heights) =>
      (columnsPerBoard === 2 ? balanceTwo(heights) : [heights.map((_, index) => index)]).every(
        (column) => column.reduce((sum, index) => sum + (heights[index] ?? 0), 0) <= tall,
      ),
    );
  const least = fontSizePx(LEAST_MINUTES, room, window.innerWidth);
  const most = fontSizePx(GOOD_MINUTES * 1.3, room, window.innerWidth);
  let sizePx = least;
  if (isOnePage(sizePx)) while (sizePx + 1 <= most && isOnePage(sizePx + 1)) sizePx += 1;
  else if (isAllAtOnce) while (sizePx > 8 && !isOnePage(sizePx)) sizePx -= 1;
  const isOne = isOnePage(sizePx);
  const pages = heightsAt(sizePx).map((heights) => {
    const all = [heights.map((_, index) => index)];
    if (isOne) return [columnsPerBoard === 2 ? balanceTwo(heights) : all];
    return groupPages(packColumns(heights, tall), columnsPerBoard);
  });
  return { sizePx, pages };
}

interface BoardPageProps {
  readonly board: Board;
  readonly columns: readonly (readonly number[])[];
  readonly isBeside: boolean;
}

function BoardPage({ board, columns, isBeside }: BoardPageProps) {
  return (
    <section
      className={styles.board}
      aria-label={isBeside ? yearsName(board.years, board.locale) : `Number ${board.number}`}
    >
      {isBeside && <h2 className={styles.year}>{yearsName(board.years, board.locale)}</h2>}
      {columns.map((column) => (
        <ol key={column[0]} className={styles.column}>
          {column.map((index) => {
            const rung = board.rungs[index];
            return rung && <RungItem key={rung.rung} rung={rung} locale={board.locale} />;
          })}
        </ol>
      ))}
    </section>
  );
}

function RungItem({ rung: { rung, question }, locale }: { readonly rung: Rung; readonly locale: LocaleId }) {
  return (
    <li className={rung === MINIMUM_RUNGS ? styles.minimum : undefined}>
      <span className={styles.place}>{rung}</span>
      <span className={styles.text}>
        <span>
          <MathText text={question.text} />
        </span>
        {question.figure && <FigureView figure={question.figure} locale={locale} scale={4} />}
      </span>
    </li>
  );
}
