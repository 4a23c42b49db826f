// Dragging with fingers, a pen or a mouse: each pointer carries a piece of its own, so two hands, or two children, can work
// at once. A press without a move is told apart here too, since browsers leave out the click after a quick swipe.
import {
  type MouseEvent as ReactMouseEvent,
  type PointerEvent as ReactPointerEvent,
  useEffect,
  useEffectEvent,
  useRef,
  useState,
} from 'react';

/** A piece under a pointer, in CSS pixels of the window. `over` is the place of the table it is over, if any. */
export interface Drag<P> {
  readonly pointer: number;
  readonly piece: number;
  readonly x: number;
  readonly y: number;
  /** Where the piece was taken hold of: from its left and top edge, as shares of its size. */
  readonly grip: readonly [x: number, y: number];
  readonly over: P | null;
}

/** Pixels a pointer moves before it is taken to drag. */
const START_PX = 7;

interface Pressed {
  readonly drag: Drag<never>;
  readonly fromX: number;
  readonly fromY: number;
  readonly isMoving: boolean;
}

export interface Dragging<P> {
  readonly drags: readonly Drag<P>[];
  /** For onPointerDown of whatever shows the piece; `grip` when that is not the whole piece. */
  readonly take: (
    event: ReactPointerEvent<HTMLElement>,
    piece: number,
    grip?: readonly [number, number],
  ) => void;
  /**
   * True for the click that a browser sends after a finger or mouse let go: that press was told of already, and the click
   * may even fall on another piece that has moved there meanwhile.
   */
  readonly isEcho: (click: ReactMouseEvent) => boolean;
}

interface Handlers<P> {
  /** The place under a piece in the air. */
  readonly locate: (drag: Drag<never>) => P | null;
  readonly onDrop: (drag: Drag<P>) => void;
  /** A piece was pressed and not moved. */
  readonly onPress: (piece: number) => void;
}

/** Clicks of pointers come within this time of letting go, in browsers that do not say whose click it is. */
const CLICK_MS = 400;

export function useDrag<P>({ locate, onDrop, onPress }: Handlers<P>): Dragging<P> {
  const pressed = useRef(new Map<number, Pressed>());
  const letGoMs = useRef(Number.NEGATIVE_INFINITY);
  const [drags, setDrags] = useState<readonly Drag<P>[]>([]);
  const located = useEffectEvent((drag: Drag<never>): Drag<P> => ({ ...drag, over: locate(drag) }));
  const dropped = useEffectEvent(onDrop);
  const wasPressed = useEffectEvent(onPress);

  useEffect(() => {
    const show = () =>
      setDrags(
        [...pressed.current.values()].filter(({ isMoving }) => isMoving).map(({ drag }) => located(drag)),
      );
    const onMove = (event: PointerEvent) => {
      const own = pressed.current.get(event.pointerId);
      if (!own) return;
      const { clientX: x, clientY: y } = event;
      const isMoving = own.isMoving || Math.hypot(x - own.fromX, y - own.fromY) >= START_PX;
      pressed.current.set(event.pointerId, { ...own, drag: { ...own.drag, x, y }, isMoving });
      if (isMoving) show();
    };
    const onEnd = (event: PointerEvent) => {
      const own = pressed.current.get(event.pointerId);
      if (!own) return;
      pressed.current.delete(event.pointerId);
      letGoMs.current = performance.now();
      show();
      if (event.type !== 'pointerup') return;
      if (!own.isMoving) wasPressed(own.drag.piece);
      else dropped(located({ ...own.drag, x: event.clientX, y: event.clientY }));
    };
    window.addEventListener('pointermove', onMove);
    window.addEventListener('pointerup', onEnd);
    window.addEventListener('pointercancel', onEnd);
    return () => {
      window.removeEventListener('pointermove', onMove);
      window.removeEventListener('pointerup', onEnd);
      window.removeEventListener('pointercancel', onEnd);
    };
  }, []);

  return {
    drags,
    take: (event, piece, grip) => {
      if (event.button !== 0 || [...pressed.current.values()].some(({ drag }) => drag.piece === piece))
        return;
      // A captured pointer would be lost with its element when another hand changes the page.
      const pressedOn = event.target as Element;
      if (pressedOn.hasPointerCapture(event.pointerId)) pressedOn.releasePointerCapture(event.pointerId);
      const { left, top, width, height } = event.currentTarget.getBoundingClientRect();
      const { clientX: x, clientY: y, pointerId: pointer } = event;
      const held = grip ?? ([(x - left) / width, (y - top) / height] as const);
      const drag = { pointer, piece, x, y, grip: held, over: null };
      pressed.current.set(pointer, { drag, fromX: x, fromY: y, isMoving: false });
    },
    isEcho: ({ nativeEvent }) => {
      const { pointerType } = nativeEvent as Partial<PointerEvent>;
      return pointerType === undefined ? performance.now() - letGoMs.current < CLICK_MS : pointerType !== '';
    },
  };
}
