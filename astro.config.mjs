import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { holdUnitsInLessons } from './src/setup/hold-units.ts';
import { leanScripts } from './src/setup/lean-scripts.ts';
import { subsetFonts } from './src/setup/subset-fonts.ts';

export default defineConfig({
  publicDir: './src/public',
  integrations: [mdx(), subsetFonts()],
  markdown: { syntaxHighlight: false },
  trailingSlash: 'always',
  security: {
    // Nothing leaves the reader's machine, and nothing foreign runs on a page. KaTeX lays formulas out with style attributes.
    csp: {
      directives: ["default-src 'self'", "img-src 'self' data:", "object-src 'none'", "base-uri 'self'"],
      styleDirective: { resources: ["'self'", { resource: "'unsafe-inline'", kind: 'attribute' }] },
    },
  },
  devToolbar: { enabled: false },
  prefetch: false,
  vite: {
    plugins: [holdUnitsInLessons(), leanScripts()],
    // The smallest font would otherwise become a data: address, which the content security policy refuses.
    build: { assetsInlineLimit: 0 },
  },
});
