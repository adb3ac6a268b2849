import type { HtmlTagDescriptor, Plugin } from 'vite';

export interface FirstOfThePage {
  /** The whole path of a source that the page's program imports too. */
  readonly program: string;
  /** The file's name, as it is in its package, of the font that the first words are set in. */
  readonly font: string;
}

/**
 * Has the page run a small program of its own while the large one is still on its way, and fetch its font from the first moment and not when the first words are
 * there.
 */
export function firstOfThePage({ program, font }: FirstOfThePage): Plugin {
  return {
    name: 'first-of-the-page',
    apply: 'build',
    buildStart() {
      this.emitFile({ type: 'chunk', id: program });
    },
    transformIndexHtml: {
      order: 'post',
      handler: (_, { bundle = {} }) => {
        const files = Object.values(bundle);
        const first = files.find((file) => file.type === 'chunk' && file.facadeModuleId === program);
        if (first === undefined) throw new Error(`missing chunk: ${program}`);
        const letters = files.find((file) => file.type === 'asset' && file.names.includes(font));
        if (letters === undefined) throw new Error(`missing font: ${font}`);
        return [
          tag('script', { type: 'module', src: `./${first.fileName}` }),
          tag('link', { rel: 'preload', as: 'font', type: 'font/woff2', href: `./${letters.fileName}` }),
        ];
      },
    },
  };
}

function tag(name: string, attrs: Record<string, string>): HtmlTagDescriptor {
  return { tag: name, attrs: { crossorigin: true, ...attrs }, injectTo: 'head-prepend' };
}
