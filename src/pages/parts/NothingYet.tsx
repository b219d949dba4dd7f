/** A page with nothing to show says what would stand here, and the one step that brings it. */
import { usePages, useSession } from '../context';
import { PageLink } from './Bar';

export const NOTHING_YET = ['explain', 'known', 'say', 'hand', 'teachBack', 'show'] as const;

/** Nothing at all is known: whatever a page would say then is about no foot in particular. */
export const useNothingKnown = (): boolean => useSession((state) => state.file.claims.length === 0);

export const NothingYet = ({ page }: { readonly page: (typeof NOTHING_YET)[number] }) => {
  const { say } = usePages();
  return (
    <section className="nothing-yet">
      <p>{say(`nothing.${page}`)}</p>
      <PageLink page="new" className="button-main">
        {say('nothing.next')}
      </PageLink>
    </section>
  );
};
