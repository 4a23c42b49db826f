// The source of what teachers know from practice and nobody is known to have published.
export const COMMON = 'common practice';
