import { type ReactNode, useEffect, useRef } from 'react';
import { BrandMark } from './brand-mark.tsx';
import styles from './masthead.module.css';
import { addressOf, type Place } from './place.ts';

/** The places of the workbench, in the order of a coach's week. */
const places: readonly { readonly text: string; readonly place: Place }[] = [
  { text: 'Play', place: { kind: 'play', play: undefined } },
  { text: 'Reads', place: { kind: 'reads', play: undefined } },
  { text: 'Teach', place: { kind: 'teach', part: 'sheets', play: undefined } },
  { text: 'Team', place: { kind: 'team' } },
  { text: 'Scout', place: { kind: 'opponents', opponent: undefined } },
  { text: 'Bench', place: { kind: 'bench' } },
  { text: 'Season', place: { kind: 'season' } },
  { text: 'Playbook', place: { kind: 'playbook' } },
];

/** Name, places, and what holds for all of them. */
export function Masthead({ place, children }: { readonly place: Place; readonly children?: ReactNode }): ReactNode {
  const links = useRef<HTMLElement>(null);
  // On a phone not all places fit beside each other: where one is must be among those in sight.
  useEffect(() => {
    const row = links.current;
    const here = row?.querySelector<HTMLElement>(`[data-place="${place.kind}"]`);
    if (row == null || here == null || row.scrollWidth <= row.clientWidth) return;
    row.scrollLeft = here.offsetLeft - row.offsetLeft - (row.clientWidth - here.offsetWidth) / 2;
  }, [place.kind]);
  return (
    <header className={styles.masthead}>
      <button type="button" className={styles.skip} onClick={focusPlace}>
        To the page
      </button>
      <span className={styles.name}>
        <BrandMark />
        <span className={styles.word}>Sliderule</span>
      </span>
      <nav ref={links} className={styles.places} aria-label="Places">
        {places.map(({ text, place: target }) => (
          <a
            key={target.kind}
            className={styles.link}
            href={addressOf(target)}
            data-place={target.kind}
            aria-current={target.kind === place.kind ? 'page' : undefined}
            data-tour={target.kind === 'playbook' ? 'playbook-link' : undefined}
          >
            {text}
          </a>
        ))}
      </nav>
      <div className={styles.tools}>{children}</div>
    </header>
  );
}

// A link would make the address "#place", and the address names the place one is at.
function focusPlace(): void {
  document.getElementById('place')?.focus();
}
