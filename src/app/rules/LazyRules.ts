import { lazyPage } from '../parts/lazyPage.tsx';

/** The rule book, which is loaded when somebody opens it. */
export const { Page: LazyRules } = lazyPage(async () => (await import('./RulesPage.tsx')).RulesPage, {
  waiting: 'Loading the rules.',
  failed: 'The rules could not be loaded. Reload the page when the network is back.',
  back: 'Back',
  onBack: ({ onBack }) => onBack(),
});
