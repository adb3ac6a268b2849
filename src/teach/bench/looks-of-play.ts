import type { Order, Play } from '../../engine/index.ts';
import type { TappedLook } from './bench-event.ts';

/** As many looks as fit under a thumb. */
const mostLooks = 6;

/** The looks that a play is made for, to tap which one it came to: shots and feeds first, then skips, then other passes; at most six. */
export function looksOfPlay({ beats, reads, lastTen }: Play): readonly TappedLook[] {
  const orders: readonly Order[] = [
    ...reads.map(({ then }) => then),
    ...beats.flatMap(({ actions }) => actions),
    ...(lastTen?.reads ?? []).map(({ then }) => then),
    ...(lastTen?.beats ?? []).flatMap(({ actions }) => actions),
  ];
  const looks = new Map<string, TappedLook>();
  for (const look of orders.flatMap(lookOf)) {
    const key = JSON.stringify(look);
    if (!looks.has(key)) looks.set(key, look);
  }
  const heaviest = (look: TappedLook): number => lookOrder.indexOf(look.kind);
  return [...looks.values()].sort((one, other) => heaviest(one) - heaviest(other)).slice(0, mostLooks);
}

const lookOrder = ['feed', 'shot', 'skip', 'pass'];

function lookOf(order: Order): readonly TappedLook[] {
  if (order.kind === 'shot') return [{ kind: 'shot', from: order.by }];
  if (order.kind !== 'pass') return [];
  return [{ kind: order.style === 'adjacent' ? 'pass' : order.style, from: order.by, to: order.to }];
}

/** "feed WL to CR", "shot by P", "skip". */
export function tappedLookWords({ kind, from, to }: TappedLook): string {
  if (from === undefined) return kind === 'shot' ? 'own shot' : kind;
  return to === undefined ? `${kind} by ${from}` : `${kind} ${from} to ${to}`;
}
