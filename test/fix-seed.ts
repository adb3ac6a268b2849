import fc from 'fast-check';

/** Laws draw the same cases on every run, so that the gate's answer depends on the code alone. LAWS_SEED draws others. */
fc.configureGlobal({ seed: Number(process.env.LAWS_SEED ?? 5) });
