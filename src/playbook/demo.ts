import demo from './demo/playbook.json' with { type: 'json' };
import type { Playbook } from './schema.ts';
import { serializePlaybook } from './serialize.ts';

/** A whole playbook to start from: an invented club team of ten, three plays of our own, two invented opponents. */
export const demoPlaybook = demo as unknown as Playbook;

/** The demo as a file's text. */
export const demoText: string = /* @__PURE__ */ serializePlaybook(demoPlaybook);
