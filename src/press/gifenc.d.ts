/** What is used of gifenc 1.0.3, which brings no types. */
declare module 'gifenc' {
  interface GifFrame {
    /** Red, green and blue of each colour; with the first picture only, it then serves all. */
    readonly palette?: readonly (readonly number[])[];
    /** Milliseconds; kept in hundredths of a second. */
    readonly delay: number;
    readonly transparent?: boolean;
    readonly transparentIndex?: number;
    /** Bits that a colour's number takes. */
    readonly colorDepth?: number;
    /** 1 leaves the picture where it is for the next one to be laid over. */
    readonly dispose?: number;
    /** 0 is without end, -1 once. */
    readonly repeat?: number;
  }
  interface GifEncoder {
    writeFrame(colours: Uint8Array, width: number, height: number, frame: GifFrame): void;
    finish(): void;
    bytes(): Uint8Array;
  }
  // The package is an older kind of module: what stands in its `default` depends on who loads it.
  const gifenc: { readonly GIFEncoder: () => GifEncoder };
  export default gifenc;
  export function GIFEncoder(): GifEncoder;
}
