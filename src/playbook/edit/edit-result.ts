import type { Playbook, PlayEntry } from '../schema.ts';

/** An edit that the field, the rules or the format does not allow, and why, in a sentence for the coach. */
export interface Refused {
  readonly kind: 'refused';
  readonly reason: string;
}

/** Where an action stands: the id of its beat, which names the script too, and its place in the beat, from 0. */
export interface ActionAddress {
  readonly beat: string;
  readonly action: number;
}

/** What an edit made of a play. What it does not change is the same object as before. */
export interface EditedPlay {
  readonly kind: 'edited';
  readonly play: PlayEntry;
  /** What else changed or was lost with it, a sentence each; mostly empty. */
  readonly also: readonly string[];
  /** The beat and the action that was added or changed, for edits that choose it themselves. */
  readonly at?: ActionAddress;
}

export type PlayEdit = EditedPlay | Refused;

export interface EditedPlaybook {
  readonly kind: 'edited';
  readonly playbook: Playbook;
  readonly also: readonly string[];
  /** The id of what was made, for edits that make something. */
  readonly id?: string;
}

export type PlaybookEdit = EditedPlaybook | Refused;

export function refused(reason: string): Refused {
  return { kind: 'refused', reason };
}

export function editedPlay(play: PlayEntry, also: readonly string[] = [], at?: ActionAddress): EditedPlay {
  return { kind: 'edited', play, also, ...(at !== undefined && { at }) };
}

export function editedPlaybook(playbook: Playbook, also: readonly string[] = [], id?: string): EditedPlaybook {
  return { kind: 'edited', playbook, also, ...(id !== undefined && { id }) };
}
