import type { Read } from '../../engine/index.ts';

/**
 * Which of its man's reads a read already is, counted from 1 in the order in which he looks; undefined when he has not been taught it. One
 * that he has in every step is the same in each.
 */
export function taughtAs(read: Read, reads: readonly Read[]): number | undefined {
  const his = reads.filter(({ carrier }) => carrier === read.carrier);
  const place = his.findIndex((one) => isSameRead(one, read) || isSameRead(one, everyStep(read)));
  return place < 0 ? undefined : place + 1;
}

function everyStep({ during: _, ...read }: Read): Read {
  return read;
}

/** Whether two reads say the same, whatever the order in which their parts were written down. */
export function isSameRead(one: Read | undefined, other: Read | undefined): boolean {
  return isSame(one, other);
}

function isSame(one: unknown, other: unknown): boolean {
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return one === other;
  const [keys, others] = [givenKeys(one), givenKeys(other)];
  return (
    keys.length === others.length &&
    keys.every((key) => isSame(one[key as keyof typeof one], other[key as keyof typeof other]))
  );
}

function givenKeys(value: object): readonly string[] {
  return Object.keys(value).filter((key) => value[key as keyof typeof value] !== undefined);
}
