/** `content/` as one checked object: made by the build (vite.config.ts), fetched as data from beside the scripts. */
declare module 'virtual:content' {
  import type { Content } from '../content/schema';

  export const loadContent: () => Promise<Content>;
}
