import { type Playbook, schemeName } from '../../playbook/index.ts';

/** A scheme in a word, as it is called across a field: for a button under a thumb. One that a coach wrote has his own name. */
export function shortSchemeName(playbook: Pick<Playbook, 'schemes'>, id: string): string {
  const isOwn = playbook.schemes?.some((one) => one.id === id) === true;
  return isOwn ? schemeName(playbook, id) : (shortNames[id] ?? schemeName(playbook, id));
}

const shortNames: Readonly<Record<string, string | undefined>> = {
  'box-zone': 'Box + one',
  'box-string': 'String',
  'four-man-rotation': 'Four-man',
  'five-man-rotation': 'Five-man',
  'diamond-and-one': 'Diamond',
  'house-3-2': 'House',
  'zone-2-3': '2-3',
};
