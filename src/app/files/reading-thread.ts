import { parseUnfinished } from '../../playbook/index.ts';

// Reads one file's text beside the page: a playbook of two hundred plays takes a second, for which the page would stand still.
self.onmessage = ({ data }: MessageEvent<string>): void => self.postMessage(parseUnfinished(data));
