import { create } from 'zustand';

const storageKey = 'sliderule:bench:alerts';

interface Alerts {
  readonly sound: boolean;
  readonly vibration: boolean;
  readonly change: (part: Partial<Pick<Alerts, 'sound' | 'vibration'>>) => void;
}

/** Whether warnings are heard and felt, kept on this device. */
export const useAlerts = create<Alerts>((set, get) => ({
  ...remembered(),
  change: (part) => {
    set(part);
    const { sound, vibration } = get();
    try {
      localStorage.setItem(storageKey, JSON.stringify({ sound, vibration }));
    } catch {
      // Then it is chosen anew next time.
    }
  },
}));

function remembered(): { readonly sound: boolean; readonly vibration: boolean } {
  try {
    const read = JSON.parse(localStorage.getItem(storageKey) ?? '{}') as Record<string, unknown>;
    return { sound: read.sound !== false, vibration: read.vibration !== false };
  } catch {
    return { sound: true, vibration: true };
  }
}

let context: AudioContext | undefined;

/** Lets the page make sounds: a browser allows it only from inside a tap. */
export function allowSound(): void {
  if (!useAlerts.getState().sound || typeof AudioContext === 'undefined') return;
  context ??= new AudioContext();
  void context.resume().catch(() => undefined);
}

/** Warns the bench: two short tones at ten seconds, three at five. Silent until a tap has allowed it. */
export function warnBench(secondsLeft: number): void {
  const { sound, vibration } = useAlerts.getState();
  const times = secondsLeft <= 5 ? 3 : 2;
  if (vibration && navigator.userActivation?.hasBeenActive !== false) {
    navigator.vibrate?.(Array.from({ length: 2 * times - 1 }, () => pulse));
  }
  if (sound && context?.state === 'running') for (let at = 0; at < times; at++) beep(context, at * 0.22);
}

/** Milliseconds of a pulse, and of the pause after it. */
const pulse = 160;
/** High enough to be heard through a crowd, Hz. */
const pitch = 1_760;

function beep(audio: AudioContext, after: number): void {
  const [from, until] = [audio.currentTime + after, audio.currentTime + after + 0.14];
  const tone = new OscillatorNode(audio, { type: 'square', frequency: pitch });
  const loudness = new GainNode(audio, { gain: 0.25 });
  tone.connect(loudness).connect(audio.destination);
  tone.start(from);
  tone.stop(until);
}
