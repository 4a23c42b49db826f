// A trail to lay on the screen: the mat of questions, the loose tiles, and the path that the tiles draw.
import { type ComponentProps, useMemo } from 'react';
import type { Trail } from '#engine/activities/trail/trail.js';
import { MatTable } from './mat-table.js';
import { trailPieces } from './trail-pieces.js';

interface Props extends Omit<ComponentProps<typeof MatTable>, 'pieces'> {
  readonly trail: Trail;
}

export function TrailTable({ trail, ...table }: Props) {
  const pieces = useMemo(() => trailPieces(trail), [trail]);
  return <MatTable pieces={pieces} {...table} />;
}
