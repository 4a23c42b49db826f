// Classes and children for screens and commands.
import type { Child, ClassDetail, ClassSummary, NewChild, NewClass } from '#api/class.js';
import type { Result } from '#api/problem.js';
import type { Child as StoredChild, ChildInput, SchoolClass } from '#store/records.js';
import { refuse } from '../problems.js';
import { faultOfName, tidyName } from '../roster/name-rules.js';
import type { Services } from '../services.js';
import { DEMO_CLASS_NAME } from './demo-class.js';
import { shownNames } from './shown-names.js';

/** All classes with their sizes. */
export async function listClasses(services: Services): Promise<Result<ClassSummary[]>> {
  const classes = await services.store.classes.list();
  if (!classes.ok) return classes;
  const out: ClassSummary[] = [];
  for (const schoolClass of classes.value) {
    const children = await services.store.children.list(schoolClass.id);
    if (!children.ok) return children;
    out.push(summaryOf(schoolClass, children.value.length));
  }
  return { ok: true, value: out };
}

function summaryOf(schoolClass: SchoolClass, childCount: number): ClassSummary {
  return {
    id: schoolClass.id,
    name: schoolClass.name,
    years: [...schoolClass.years],
    childCount,
    demo: schoolClass.name === DEMO_CLASS_NAME,
  };
}

/** One class with its children in list order. */
export async function classDetail(services: Services, classId: string): Promise<Result<ClassDetail>> {
  const schoolClass = await services.store.classes.get(classId);
  if (!schoolClass.ok) return schoolClass;
  const children = await services.store.children.list(classId);
  if (!children.ok) return children;
  return {
    ok: true,
    value: { ...summaryOf(schoolClass.value, children.value.length), children: toScreen(children.value) },
  };
}

/** The children of a class as screens show them, in list order. */
export async function listChildren(services: Services, classId: string): Promise<Result<Child[]>> {
  const children = await services.store.children.list(classId);
  return children.ok ? { ok: true, value: toScreen(children.value) } : children;
}

/** Stored children as screens show them. */
export function toScreen(children: readonly StoredChild[]): Child[] {
  const names = shownNames(children);
  return children.map(({ id, givenName, familyName, alias, year }, index) => ({
    id,
    givenName,
    familyName,
    alias,
    year,
    shownAs: names[index] ?? givenName,
  }));
}

/** A new class with its children; when any child cannot be kept, nothing is. */
export async function createClass(services: Services, input: NewClass): Promise<Result<ClassDetail>> {
  const inputs = toInputs(input.children);
  if (!inputs.ok) return inputs;
  const created = await services.store.classes.create({
    name: tidyName(input.name),
    years: sortedYears(input.years),
  });
  if (!created.ok) return created;
  if (inputs.value.length > 0) {
    const added = await services.store.children.add(created.value.id, inputs.value);
    if (!added.ok) {
      // The class row alone would be half of what was asked for.
      await services.store.classes.erase(created.value.id);
      return added;
    }
  }
  return classDetail(services, created.value.id);
}

export async function changeClass(
  services: Services,
  classId: string,
  input: Omit<NewClass, 'children'>,
): Promise<Result<ClassDetail>> {
  const changed = await services.store.classes.update(classId, {
    name: tidyName(input.name),
    years: sortedYears(input.years),
  });
  return changed.ok ? classDetail(services, classId) : changed;
}

/** Adds children to a class, all or none. */
export async function addChildren(
  services: Services,
  classId: string,
  children: readonly NewChild[],
): Promise<Result<ClassDetail>> {
  const inputs = toInputs(children);
  if (!inputs.ok) return inputs;
  const added = await services.store.children.add(classId, inputs.value);
  return added.ok ? classDetail(services, classId) : added;
}

export async function changeChild(
  services: Services,
  childId: string,
  input: NewChild,
): Promise<Result<Child>> {
  const inputs = toInputs([input]);
  if (!inputs.ok) return inputs;
  const { joined: _, ...patch } = inputs.value[0] as ChildInput;
  const changed = await services.store.children.update(childId, patch);
  if (!changed.ok) return changed;
  const all = await services.store.children.list(changed.value.classId);
  if (!all.ok) return all;
  const shown = toScreen(all.value).find((child) => child.id === childId);
  return shown
    ? { ok: true, value: shown }
    : refuse('child.missing', 'This child is no longer in the class.', 'Reload the page.');
}

function sortedYears(years: readonly number[]): number[] {
  return [...new Set(years)].sort((a, b) => a - b);
}

function toInputs(children: readonly NewChild[]): Result<ChildInput[]> {
  const out: ChildInput[] = [];
  for (const [index, child] of children.entries()) {
    const names = {
      givenName: tidyName(child.givenName),
      familyName: tidyName(child.familyName),
      alias: tidyName(child.alias),
    };
    for (const [field, name] of Object.entries(names)) {
      const fault = name === '' && field !== 'givenName' ? null : faultOfName(name);
      if (fault) return refuse('child.name', `Child ${index + 1}: ${fault.message}`, fault.hint);
    }
    out.push({ ...names, year: child.year, joined: null });
  }
  return { ok: true, value: out };
}
