// Addresses of screens. Each screen's code stands in its own folder under screens/.
import {
  createRootRouteWithContext,
  createRoute,
  createRouter,
  lazyRouteComponent,
  redirect,
} from '@tanstack/react-router';
import type { QueryClient } from '@tanstack/react-query';
import { z } from 'zod';
import { SET_KINDS } from '#engine/planning/set-shelf.js';
import { BoardDisplay } from '../display/board-display.js';
import { ChildrenScreen } from '../screens/children/children-screen.js';
import { readWishSearch } from '../screens/make/wish-search.js';
import { MarkingScreen } from '../screens/marking/marking-screen.js';
import { PrintScreen } from '../screens/print-room/print-screen.js';
import { SettingsScreen } from '../screens/settings/settings-screen.js';
import { SkillsSearch } from '../screens/skills/skills-search.js';
import { StartScreen } from '../screens/start/start-screen.js';
import { TodayScreen } from '../screens/today/today-screen.js';
import { UnderstandingScreen } from '../screens/understanding/understanding-screen.js';
import { readSolveSearch } from '../solve/solve-search.js';
import { stateQuery } from './queries.js';
import { ClassFrame } from './class-frame.js';
import { LostPage } from './lost-page.js';
import { Root } from './root.js';

const daySearch = z.object({ date: z.string().optional() });

const root = createRootRouteWithContext<{ queries: QueryClient }>()({
  component: Root,
  notFoundComponent: LostPage,
});

const home = createRoute({
  getParentRoute: () => root,
  path: '/',
  beforeLoad: async ({ context }) => {
    const state = await context.queries.fetchQuery(stateQuery);
    const first = state.classes[0];
    throw first
      ? redirect({ to: '/class/$classId/today', params: { classId: first.id } })
      : redirect({ to: '/start' });
  },
});
const start = createRoute({ getParentRoute: () => root, path: '/start', component: StartScreen });
const settings = createRoute({ getParentRoute: () => root, path: '/settings', component: SettingsScreen });
const display = createRoute({
  getParentRoute: () => root,
  path: '/display/$classId/$date',
  validateSearch: z.object({ show: z.string().optional() }),
  component: BoardDisplay,
});
const solve = createRoute({
  getParentRoute: () => root,
  path: '/solve/$classId',
  validateSearch: readSolveSearch,
  component: lazyRouteComponent(() => import('../solve/solve-screen.js'), 'SolveScreen'),
});

const clock = createRoute({
  getParentRoute: () => root,
  path: '/clock/$classId',
  validateSearch: z.object({ minutes: z.number().min(1).max(15).optional() }),
  component: lazyRouteComponent(() => import('../display/practice-clock.js'), 'PracticeClock'),
});

const inClass = createRoute({ getParentRoute: () => root, path: '/class/$classId', component: ClassFrame });
const today = createRoute({
  getParentRoute: () => inClass,
  path: '/today',
  validateSearch: daySearch,
  component: TodayScreen,
});
const print = createRoute({
  getParentRoute: () => inClass,
  path: '/print',
  validateSearch: daySearch,
  component: PrintScreen,
});
const make = createRoute({
  getParentRoute: () => inClass,
  path: '/make',
  validateSearch: readWishSearch,
  // Fetched when the room is first entered: most mornings need only today's board.
  component: lazyRouteComponent(() => import('../screens/make/make-screen.js'), 'MakeScreen'),
});
const sets = createRoute({
  getParentRoute: () => inClass,
  path: '/sets',
  validateSearch: z.object({
    kind: z.enum(SET_KINDS).optional().catch(undefined),
    view: z.enum(['rota', 'shelf']).optional().catch(undefined),
  }),
  component: lazyRouteComponent(() => import('../screens/library/sets-screen.js'), 'SetsScreen'),
});
const practice = createRoute({
  getParentRoute: () => inClass,
  path: '/practice',
  validateSearch: daySearch,
  component: lazyRouteComponent(() => import('../screens/practice/practice-screen.js'), 'PracticeScreen'),
});
const marking = createRoute({
  getParentRoute: () => inClass,
  path: '/marking',
  validateSearch: z.object({ date: z.string().optional(), sheet: z.string().optional() }),
  component: MarkingScreen,
});
const understanding = createRoute({
  getParentRoute: () => inClass,
  path: '/understanding',
  validateSearch: z.object({ child: z.string().optional(), skill: z.string().optional() }),
  component: UnderstandingScreen,
});
const skills = createRoute({
  getParentRoute: () => inClass,
  path: '/skills',
  validateSearch: SkillsSearch,
  // The whole skill map comes with it; the other screens need not wait for that.
  component: lazyRouteComponent(() => import('../screens/skills/skills-screen.js'), 'SkillsScreen'),
});
const children = createRoute({ getParentRoute: () => inClass, path: '/children', component: ChildrenScreen });

const tree = root.addChildren([
  home,
  start,
  settings,
  display,
  clock,
  solve,
  inClass.addChildren([today, make, print, sets, practice, marking, understanding, skills, children]),
]);

export function makeRouter(queries: QueryClient) {
  return createRouter({ routeTree: tree, context: { queries }, defaultPreload: 'intent' });
}

declare module '@tanstack/react-router' {
  interface Register {
    router: ReturnType<typeof makeRouter>;
  }
}
