// A trail as pieces on a mat: square tiles, any of which can lie on any cell.
import { drawMat, cellName, RIM_MM } from '#engine/activities/trail/draw/draw-mat.js';
import { drawTile } from '#engine/activities/trail/draw/draw-tile.js';
import { tileSideMm } from '#engine/activities/trail/sizes.js';
import type { Trail } from '#engine/activities/trail/trail.js';
import { Rng } from '#engine/random/rng.js';
import { type MatShape, type Place, pieceOn } from './mat.js';
import type { MatPieces } from './mat-pieces.js';
import { questionHints } from './question-hints.js';
import { cellOf, edgeWords, trailCellWords } from './trail-words.js';

/** The mat and tiles of a trail as the table shows them. */
export function trailPieces(trail: Trail): MatPieces {
  const { rows, columns, locale } = trail;
  const sideMm = tileSideMm(rows, columns);
  const ground = drawMat(trail);
  const shape: MatShape = { rows, columns, pieces: trail.tiles.map(() => [[0, 0]]), whenTaken: 'swap' };
  const nameAt = (place: Place) => cellName(trail, cellOf(trail, place));
  const question = (place: Place) => trail.cells[cellOf(trail, place)]?.question;
  return {
    shape,
    locale,
    // Tiles are numbered by the cells they belong on, so their order must not be seen.
    homes: new Rng(trail.seed).fork('loose').shuffle(trail.tiles.map((_, tile) => tile)),
    ground: {
      svg: ground.svg,
      width: ground.widthMm / sideMm,
      height: ground.heightMm / sideMm,
      left: RIM_MM.beside / sideMm,
      top: RIM_MM.above / sideMm,
    },
    pieces: trail.tiles.map((_, tile) => {
      const { svg, alt } = drawTile(trail, tile);
      return { svg, words: `Tile ${alt}`, width: 1, height: 1, left: 0, top: 0 };
    }),
    cellWords: (mat, place) => trailCellWords(trail, shape, mat, place),
    placeWords: (_, place) => `On ${nameAt(place)}: ${question(place)?.text ?? ''}`,
    laidWords: (mat, tile) => {
      const place = mat.places[tile];
      return place ? `On ${nameAt(place)}. ${edgeWords(trail, shape, mat, tile)}` : '';
    },
    hints: (mat, asked) => {
      const bare = shape.pieces.map((_, cell): Place => [Math.floor(cell / columns), cell % columns]);
      const cell = asked ?? bare.find((place) => pieceOn(shape, mat, place) === null);
      const about = cell ? question(cell) : undefined;
      if (!cell || !about) {
        return {
          about: 'path',
          hints: [{ text: 'Follow the path with your finger from the way in. Where does it lead?' }],
        };
      }
      const first = { text: `${nameAt(cell)}: ${about.text}`, figure: about.figure, isForAll: true };
      return { about: nameAt(cell), hints: [first, ...questionHints(about).map((text) => ({ text }))] };
    },
    hasQuestions: true,
  };
}
