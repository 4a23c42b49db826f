// Topics of surveys and their labels.

/** What a survey asked. */
export interface Topic {
  readonly title: string;
  readonly labels: readonly [string, string, string, string];
  /** "How many ... chose apples": the people or things counted. */
  readonly who: string;
  readonly did: string;
}

/** Surveys that suit any class. */
export const TOPICS: readonly Topic[] = [
  {
    title: 'Favourite fruit',
    labels: ['apples', 'pears', 'grapes', 'bananas'],
    who: 'children',
    did: 'chose',
  },
  { title: 'Ways to school', labels: ['bus', 'bike', 'car', 'walking'], who: 'children', did: 'came by' },
  { title: 'Pets', labels: ['dogs', 'cats', 'birds', 'fish'], who: 'children', did: 'have' },
  {
    title: 'Hobbies',
    labels: ['running', 'dancing', 'drawing', 'swimming'],
    who: 'children',
    did: 'like',
  },
];

/** Topics whose labels are plain things, so that every sentence about them reads well. */
export const CHOSEN = TOPICS.filter((topic) => topic.did !== 'came by');

/** US spelling where the locale asks for it. */
export function titleOf(topic: Topic, colour: string): string {
  return colour === 'color' ? topic.title.replace('Favourite', 'Favorite') : topic.title;
}

/** "chose apples", "came by bus", "came on foot". */
export function didText(topic: Topic, label: string): string {
  return topic.did === 'came by' && label === 'walking' ? 'came on foot' : `${topic.did} ${label}`;
}
