// Exact cover, the one solver behind the proofs: choose options so that every primary item is covered exactly once.
// Secondary items may be left uncovered; when options give them a colour, several may cover the same one in one colour.
// The search is the usual one of doubly linked lists that are unhooked and hooked in again (D. Knuth, "Dancing links",
// 2000, with the colours of "The Art of Computer Programming" 4B, section 7.2.2.1).

/** What one option covers: an item, and for a secondary item maybe the colour (1 or more) in which it does. */
export interface Covering {
  readonly item: number;
  readonly colour?: number;
}

export interface ExactCoverProblem {
  /** Items 0 to primary - 1 must be covered exactly once. */
  readonly primary: number;
  /** Items from `primary` on, so many, at most once, or by any number of options in one colour. */
  readonly secondary?: number;
  readonly options: readonly (readonly Covering[])[];
}

export interface CoverSearch {
  /** Covers found; a lower bound when `isComplete` is false. */
  readonly covers: number;
  /** Options tried. */
  readonly nodes: number;
  /** False when a limit ended the search. */
  readonly isComplete: boolean;
}

export interface CoverLimits {
  /** Stop after so many covers. */
  readonly covers?: number;
  /** Stop after so many tries. */
  readonly nodes?: number;
}

/**
 * How many exact covers there are, up to the limits. `visit`, when given, sees the chosen options of each cover (indices,
 * in the order of choice; the list is only lent) and may return false to stop.
 */
export function searchCovers(
  problem: ExactCoverProblem,
  limits: CoverLimits = {},
  visit?: (options: readonly number[]) => boolean | void,
): CoverSearch {
  const web = weave(problem);
  const { left, right, up, down, top, colour, size, option } = web;
  const mostCovers = limits.covers ?? Number.POSITIVE_INFINITY;
  const mostNodes = limits.nodes ?? Number.POSITIVE_INFINITY;
  const chosen: number[] = [];
  let covers = 0;
  let nodes = 0;
  let isStopped = false;

  const hide = (node: number): void => {
    for (let other = node + 1; other !== node; ) {
      const item = top[other] as number;
      if (item < 0) {
        other = up[other] as number;
        continue;
      }
      if ((colour[other] as number) >= 0) {
        down[up[other] as number] = down[other] as number;
        up[down[other] as number] = up[other] as number;
        size[item] = (size[item] as number) - 1;
      }
      other++;
    }
  };
  const unhide = (node: number): void => {
    for (let other = node - 1; other !== node; ) {
      const item = top[other] as number;
      if (item < 0) {
        other = down[other] as number;
        continue;
      }
      if ((colour[other] as number) >= 0) {
        down[up[other] as number] = other;
        up[down[other] as number] = other;
        size[item] = (size[item] as number) + 1;
      }
      other--;
    }
  };
  const cover = (item: number): void => {
    for (let node = down[item] as number; node !== item; node = down[node] as number) hide(node);
    right[left[item] as number] = right[item] as number;
    left[right[item] as number] = left[item] as number;
  };
  const uncover = (item: number): void => {
    left[right[item] as number] = item;
    right[left[item] as number] = item;
    for (let node = up[item] as number; node !== item; node = up[node] as number) unhide(node);
  };
  // An option fixes the colour of an item: options in other colours go, those in the same colour are marked as settled.
  const purify = (at: number): void => {
    const item = top[at] as number;
    const wanted = colour[at] as number;
    for (let node = down[item] as number; node !== item; node = down[node] as number) {
      if (colour[node] === wanted) colour[node] = -1;
      else hide(node);
    }
    settled[at] = wanted;
  };
  const unpurify = (at: number): void => {
    const item = top[at] as number;
    const wanted = settled[at] as number;
    for (let node = up[item] as number; node !== item; node = up[node] as number) {
      if ((colour[node] as number) < 0) colour[node] = wanted;
      else unhide(node);
    }
  };
  const settled = new Int32Array(top.length);
  const commit = (node: number): boolean => {
    const shade = colour[node] as number;
    if (shade === 0) cover(top[node] as number);
    else if (shade > 0) purify(node);
    return shade > 0;
  };
  const isPurified = new Uint8Array(top.length);

  const search = (): void => {
    if (right[0] === 0) {
      covers++;
      if (visit?.(chosen) === false || covers >= mostCovers) isStopped = true;
      return;
    }
    let item = right[0] as number;
    for (let other = item; other !== 0; other = right[other] as number) {
      if ((size[other] as number) < (size[item] as number)) item = other;
    }
    if (size[item] === 0) return;
    cover(item);
    for (let node = down[item] as number; node !== item && !isStopped; node = down[node] as number) {
      if (nodes >= mostNodes) {
        isStopped = true;
        break;
      }
      nodes++;
      for (let other = node + 1; other !== node; ) {
        if ((top[other] as number) < 0) {
          other = up[other] as number;
          continue;
        }
        isPurified[other] = commit(other) ? 1 : 0;
        other++;
      }
      chosen.push(option[node] as number);
      search();
      chosen.pop();
      for (let other = node - 1; other !== node; ) {
        if ((top[other] as number) < 0) {
          other = down[other] as number;
          continue;
        }
        if (isPurified[other]) unpurify(other);
        else if (colour[other] === 0) uncover(top[other] as number);
        other--;
      }
    }
    uncover(item);
  };
  search();
  return { covers, nodes, isComplete: !isStopped };
}

interface Web {
  readonly left: Int32Array;
  readonly right: Int32Array;
  readonly up: Int32Array;
  readonly down: Int32Array;
  /** The item of a node (1 is the first); minus a number at the spacers between options. */
  readonly top: Int32Array;
  readonly colour: Int32Array;
  readonly size: Int32Array;
  readonly option: Int32Array;
}

function weave({ primary, secondary = 0, options }: ExactCoverProblem): Web {
  const items = primary + secondary;
  const places = options.reduce((sum, option) => sum + option.length + 1, items + 2);
  const make = () => new Int32Array(places);
  const [left, right, up, down, top, colour, option] = [
    make(),
    make(),
    make(),
    make(),
    make(),
    make(),
    make(),
  ];
  const size = new Int32Array(items + 1);
  for (let item = 0; item <= items; item++) {
    up[item] = item;
    down[item] = item;
    top[item] = item;
    // Only primary items are in the ring that must become empty.
    left[item] = item === 0 ? primary : item > primary ? item : item - 1;
    right[item] = item === primary ? 0 : item > primary ? item : item + 1;
  }
  let next = items + 1;
  let spacer = next++;
  top[spacer] = -1;
  options.forEach((coverings, index) => {
    const first = next;
    for (const { item: number, colour: shade = 0 } of coverings) {
      const item = number + 1;
      if (number < 0 || number >= items)
        throw new RangeError(`option ${index} covers ${number}, of ${items} items`);
      const last = up[item] as number;
      top[next] = item;
      colour[next] = shade;
      option[next] = index;
      up[next] = last;
      down[last] = next;
      down[next] = item;
      up[item] = next;
      size[item] = (size[item] as number) + 1;
      next++;
    }
    // A spacer leads forward to the last node of the option before it, and back to the first node of the one after.
    down[spacer] = next - 1;
    spacer = next++;
    top[spacer] = -1;
    up[spacer] = first;
  });
  return { left, right, up, down, top, colour, size, option };
}

/**
 * The exact number of covers of a problem without secondary items, however large. Items are covered in their own order,
 * and what is left of them is remembered, so the work grows with the number of different frontiers, not of covers.
 */
export function countCovers({ primary, secondary = 0, options }: ExactCoverProblem): bigint {
  if (secondary > 0) throw new RangeError('counting by frontier is for primary items only');
  const masks = options.map((option) => option.reduce((mask, { item }) => mask | (1n << BigInt(item)), 0n));
  const byFirst: bigint[][] = Array.from({ length: primary }, () => []);
  options.forEach((option, i) => {
    const first = Math.min(...option.map(({ item }) => item));
    byFirst[first]?.push(masks[i] as bigint);
  });
  // One layer an item: the sets covered once all items before it are covered, and in how many ways.
  let layer = new Map<bigint, bigint>([[0n, 1n]]);
  for (let item = 0; item < primary; item++) {
    const next = new Map<bigint, bigint>();
    const add = (covered: bigint, ways: bigint) => next.set(covered, (next.get(covered) ?? 0n) + ways);
    for (const [covered, ways] of layer) {
      if ((covered >> BigInt(item)) & 1n) add(covered, ways);
      else for (const mask of byFirst[item] ?? []) if ((mask & covered) === 0n) add(covered | mask, ways);
    }
    layer = next;
  }
  return [...layer.values()].reduce((sum, ways) => sum + ways, 0n);
}
