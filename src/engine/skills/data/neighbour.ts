// Places side by side in rows and columns of three.

/** One of three places that is next to the one given. */
export const neighbour = (at: number) => (at === 2 ? 1 : at + 1);
