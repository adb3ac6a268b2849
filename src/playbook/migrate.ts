/** One step from a version of the format to the next. Pure: gets plain JSON, returns new plain JSON. */
export interface Migration {
  /** The version it starts from; it ends at `from + 1`. */
  readonly from: number;
  /** What changed, one sentence for the changelog. */
  readonly summary: string;
  readonly apply: (old: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

/** The version that this program writes. */
export const currentVersion = 1;

/** All steps, oldest first, contiguous from version 1. Version 1 is the first, so there is none yet. */
export const migrations: readonly Migration[] = [];

export type Migrated =
  | { readonly kind: 'current'; readonly value: Readonly<Record<string, unknown>> }
  /** Written by a newer program. */
  | { readonly kind: 'newer'; readonly version: number }
  /** No version that ever was. */
  | { readonly kind: 'invalid' };

/** Bring a document of any known version to the newest one. `steps` are ours unless a test brings its own. */
export function migrate(
  document: Readonly<Record<string, unknown>>,
  steps: readonly Migration[] = migrations,
): Migrated {
  checkContiguous(steps);
  const newest = steps.length + 1;
  const version = document.version;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) return { kind: 'invalid' };
  if (version > newest) return { kind: 'newer', version };
  let value = document;
  for (const step of steps.slice(version - 1)) value = { ...step.apply(value), version: step.from + 1 };
  return { kind: 'current', value };
}

function checkContiguous(steps: readonly Migration[]): void {
  for (const [i, step] of steps.entries()) {
    if (step.from !== i + 1)
      throw new RangeError(`invalid migration: step ${i} starts from version ${step.from} (expected ${i + 1})`);
  }
}
