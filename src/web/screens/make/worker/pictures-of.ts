// The pieces of a set as drawings. Made in the maker's thread, so that the page need not load what draws them.
import { drawMat, drawSolved } from '#engine/activities/trail/draw/draw-mat.js';
import type { Activity, Picture } from './messages.js';

/** What a teacher should see of a set; empty where the page lays the pieces out itself. */
export function picturesOf(activity: Activity): readonly Picture[] {
  switch (activity.kind) {
    case 'chain':
      return [];
    case 'trail':
      return [
        { caption: 'The mat with its questions', svg: drawMat(activity).svg },
        { caption: 'Every tile on its answer', svg: drawSolved(activity).svg },
      ];
  }
}
