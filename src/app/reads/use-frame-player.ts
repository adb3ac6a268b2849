import { useEffect, useState } from 'react';
import { createPlayer, type Player } from '../playback/player.ts';
import { seek } from '../playback/playhead.ts';
import { type FrameSpan, frameLength, frameStill } from './frame-moment.ts';

/** A clock of a frame's own, in seconds of watching. It rests at the cue; over and over only when `loops`, else it comes back there at the end. */
export function useFramePlayer(span: FrameSpan, loops: boolean): Player {
  const [player] = useState(() => createPlayer((callback) => requestAnimationFrame(callback)));
  useEffect(() => {
    const still = frameStill(span);
    player.change((head) => ({ ...head, from: 0, to: frameLength(span), time: still, running: false, loops }));
    const stop = player.onChange(() => {
      const { running, time, to } = player.head();
      if (!running && time >= to) player.change((head) => seek(head, still));
    });
    return () => {
      stop();
      player.change((head) => ({ ...head, running: false }));
    };
  }, [player, span, loops]);
  return player;
}
