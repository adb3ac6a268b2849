/** Parts of the page that carry `data-tour`, at which a step points. */
export type TourAnchor = 'field' | 'schemes' | 'play-controls' | 'sentence' | 'playbook-link';

export interface TourStep {
  readonly anchor: TourAnchor;
  readonly title: string;
  readonly text: string;
}

/** The first minute of a coach who has never been here. */
export const tourSteps: readonly TourStep[] = [
  {
    anchor: 'field',
    title: 'Drag a man',
    text: 'This play belongs to an invented team. Take a man on the field and put him somewhere else. With the keyboard, choose one with Tab and move him with the arrow keys. Undo takes it back.',
  },
  {
    anchor: 'schemes',
    title: 'See the answers change',
    text: 'The play runs against nine ways to defend a man down. Each says what it gives up in goals per chance, and how sure that is: coarse at first, sharper as chances are played.',
  },
  {
    anchor: 'play-controls',
    title: 'Press play',
    text: 'All fields run in step. Slow them down, pull the time back and forth, or go from one event to the next.',
  },
  {
    anchor: 'sentence',
    title: 'Find where it fails',
    text: 'One sentence says against which scheme the play is best and worst. Choose a scheme to watch it large, with who is left open, why, and what that is worth.',
  },
  {
    anchor: 'playbook-link',
    title: 'Make it your own',
    text: 'Change the demo as you like, or start an empty playbook for your own team at Playbook. All of it stays on this device.',
  },
];
