// A jigsaw to lay on the screen: its frame, its loose pieces, and rows that read true or do not.
import { type ComponentProps, useMemo } from 'react';
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import { jigsawPieces } from './jigsaw-pieces.js';
import { MatTable } from './mat-table.js';

interface Props extends Omit<ComponentProps<typeof MatTable>, 'pieces'> {
  readonly jigsaw: Jigsaw;
}

export function JigsawTable({ jigsaw, ...table }: Props) {
  const pieces = useMemo(() => jigsawPieces(jigsaw), [jigsaw]);
  return <MatTable pieces={pieces} {...table} />;
}
