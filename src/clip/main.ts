import type { Clip } from '../render/index.ts';
import { captionAt, type Film, filmOf, holderAt, nextStop, openAt, saidAt } from './film.ts';
import { createPicture, type Picture } from './picture.ts';
import { advance, type Playhead, standAt, toggle } from './playhead.ts';

// The program of a clip's page. It stands alone: of the other rooms it knows nothing but the shape of the clip that they wrote into the page.

const clip = JSON.parse(part('clip').textContent ?? '') as Clip;
const films = new Map<number, Film>();
let film: Film;
let picture: Picture;
let follow = clip.follow;
let head: Playhead = { time: 0, running: !matchMedia('(prefers-reduced-motion: reduce)').matches, speed: 1 };
let shownCaption = Number.NaN;

showScheme(0);
listenToControls();
listenToKeys();
new ResizeObserver(() => show()).observe(part('field'));
requestAnimationFrame((now) => nextFrame(now, now));

function nextFrame(now: number, before: number): void {
  if (head.running) {
    head = advance(head, (now - before) / 1000, film.end);
    show();
  }
  requestAnimationFrame((later) => nextFrame(later, now));
}

function showScheme(index: number): void {
  film = films.get(index) ?? filmOf(clip.schemes[index]!);
  films.set(index, film);
  picture = createPicture(film, clip.spots);
  shownCaption = Number.NaN;
  part<HTMLInputElement>('time').max = String(film.end);
  part('note').textContent = film.scheme.note;
  listCaptions();
  // The new scheme begins anew: its play is another one, and runs on when the old one did.
  head = { ...head, time: 0 };
  show();
}

function show(): void {
  picture.show(head.time, follow);
  const clock = `${head.time.toFixed(1)} s`;
  part('clock').textContent = clock;
  part('play').textContent = head.running ? 'Stop' : 'Play';
  const slider = part<HTMLInputElement>('time');
  slider.value = head.time.toFixed(1);
  slider.setAttribute('aria-valuetext', clock);
  showCaption(captionAt(film, head.time));
  if (!head.running) part('field').setAttribute('aria-label', momentWords());
}

function showCaption(index: number): void {
  if (index === shownCaption) return;
  shownCaption = index;
  part('said').textContent = saidAt(film, head.time) || 'The play is about to begin.';
  Array.from(part('steps').children).forEach((line, at) => {
    if (at === index) line.firstElementChild?.setAttribute('aria-current', 'step');
    else line.firstElementChild?.removeAttribute('aria-current');
  });
  part('field').setAttribute('aria-label', momentWords());
}

/** The moment for who cannot see it. */
function momentWords(): string {
  const holder = clip.spots[holderAt(film, head.time)];
  const open = [...openAt(film, head.time).keys()].map((man) => `${clip.spots[man]} is open.`);
  const ball = holder === undefined ? 'Nobody of the offense has the ball.' : `${holder} has the ball.`;
  return [`${clip.play} against ${film.scheme.name}, ${head.time.toFixed(1)} s.`, ball, ...open].join(' ');
}

function listCaptions(): void {
  const lines = film.scheme.captions.map(([time, text]) => {
    const line = document.createElement('li');
    const button = document.createElement('button');
    const clock = document.createElement('span');
    button.type = 'button';
    clock.className = 'time';
    clock.textContent = `${time.toFixed(1)} s`;
    button.append(clock, document.createTextNode(text));
    button.addEventListener('click', () => goTo(time));
    line.append(button);
    return line;
  });
  part('steps').replaceChildren(...lines);
}

function goTo(time: number): void {
  head = standAt(head, time, film.end);
  show();
}

function listenToControls(): void {
  part('play').addEventListener('click', playOrStop);
  part('next').addEventListener('click', () => goTo(nextStop(film, head.time, 1)));
  part('back').addEventListener('click', () => goTo(nextStop(film, head.time, -1)));
  part<HTMLInputElement>('time').addEventListener('input', ({ target }) => goTo(Number(chosenIn(target))));
  part('against').addEventListener('change', ({ target }) => showScheme(Number(chosenIn(target))));
  part('follow').addEventListener('change', ({ target }) => {
    follow = Number(chosenIn(target));
    show();
  });
  for (const speed of document.getElementsByName('speed')) {
    speed.addEventListener('change', ({ target }) => {
      head = { ...head, speed: Number(chosenIn(target)) };
    });
  }
}

function playOrStop(): void {
  head = toggle(head, film.end);
  show();
}

/** Space and arrows, but where they already mean something to what has the focus. */
function listenToKeys(): void {
  document.addEventListener('keydown', (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const { target } = event;
    const isPressed = target instanceof Element && target.closest('button') !== null;
    if (target instanceof Element && target.closest('select, input') !== null) return;
    if (event.key === ' ' && isPressed) return;
    if (event.key === ' ') playOrStop();
    else if (event.key === 'ArrowRight') goTo(nextStop(film, head.time, 1));
    else if (event.key === 'ArrowLeft') goTo(nextStop(film, head.time, -1));
    else return;
    event.preventDefault();
  });
}

function chosenIn(target: EventTarget | null): string {
  return (target as HTMLInputElement | HTMLSelectElement).value;
}

function part<Kind extends HTMLElement = HTMLElement>(id: string): Kind {
  return document.getElementById(id) as Kind;
}
