import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { subsetFonts } from './src/setup/subset-fonts.ts';

export default defineConfig({
  publicDir: './src/public',
  integrations: [mdx(), subsetFonts()],
  markdown: { syntaxHighlight: false },
  trailingSlash: 'always',
  devToolbar: { enabled: false },
  prefetch: false,
  vite: {
    // The smallest font would otherwise become a data: address, which the content security policy refuses.
    build: { assetsInlineLimit: 0 },
  },
});
