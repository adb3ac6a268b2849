/** What is used of omggif 1.0.10, which brings no types. */
declare module 'omggif' {
  interface GifFrameInfo {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    /** Hundredths of a second. */
    readonly delay: number;
  }
  class GifReader {
    constructor(bytes: Uint8Array);
    readonly width: number;
    readonly height: number;
    numFrames(): number;
    frameInfo(frame: number): GifFrameInfo;
    loopCount(): number | null;
    /** Draws a frame over what stands in `pixels`, four bytes each. */
    decodeAndBlitFrameRGBA(frame: number, pixels: Uint8Array): void;
  }
  const omggif: { readonly GifReader: typeof GifReader };
  export default omggif;
}
