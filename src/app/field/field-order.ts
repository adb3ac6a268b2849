import type { Point, SpotId } from '../../engine/index.ts';

/** What a coach can tell a man to do, in the words of the play language. */
export const ballVerbs = ['pass', 'skip', 'feed', 'carry', 'step', 'fake', 'hold', 'shoot'] as const;
export const runVerbs = [
  'cut',
  'pop',
  'sneak',
  'flash',
  'replace',
  'step',
  'pick',
  'seal',
  'backup',
  'getback',
] as const;
export type Verb = (typeof ballVerbs)[number] | (typeof runVerbs)[number];

/** What a verb still has to be told before it can be done. */
export type Aim = 'man' | 'place' | 'placeAndMan' | 'nothing';

export const aimOf: Readonly<Record<Verb, Aim>> = {
  pass: 'man',
  skip: 'man',
  feed: 'man',
  fake: 'man',
  seal: 'man',
  carry: 'place',
  step: 'place',
  cut: 'place',
  pop: 'place',
  sneak: 'place',
  flash: 'place',
  replace: 'place',
  backup: 'place',
  getback: 'place',
  pick: 'placeAndMan',
  hold: 'nothing',
  shoot: 'nothing',
};

/** What pointing at the field asks for: plain data, made into an edit of the play by `order-edit.ts`. */
export type FieldOrder =
  | { readonly kind: 'moveHome'; readonly spot: SpotId; readonly to: Point }
  | { readonly kind: 'moveRestart'; readonly to: Point }
  | {
      readonly kind: 'movePoint';
      readonly beat: string;
      readonly action: number;
      readonly point: number;
      readonly to: Point;
    }
  /** The ball goes to this man, by the pass that fits. */
  | { readonly kind: 'throwTo'; readonly to: SpotId }
  /** He goes there: with the ball when he has it. */
  | { readonly kind: 'send'; readonly by: SpotId; readonly to: Point }
  | { readonly kind: 'tell'; readonly by: SpotId; readonly verb: Verb; readonly at?: Point; readonly on?: SpotId };
