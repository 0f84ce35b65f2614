// For the linter, which does not read .astro files; `astro check` knows each component’s own type and goes by that.
declare module '*.astro' {
  import type { AstroComponentFactory } from 'astro/runtime/server/index.js';

  const component: AstroComponentFactory;
  export default component;
}
