/** `content/` as one checked object: made by the build (vite.config.ts), never read in the browser. */
declare module 'virtual:content' {
  import type { Content } from '../content/schema';

  const content: Content;
  export default content;
}
