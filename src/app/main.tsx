/** Start-up: content, session, worker, first words; the figure comes when the words are there. */
import { loadContent } from 'virtual:content';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import type { Foot } from '../anatomy/types';
import { emptyCase } from '../cases';
import { checkCase } from '../checks';
import { type Address, readAddress, writeAddress } from '../pages';
import '../pages/fonts.css';
import '../pages/tokens.css';
import '../pages/page.css';
import { browserStorage, createExplainRunner, createSession, NEW_CASE_ID } from '../session';
import explainWorkerUrl from '../session/explain-worker?worker&url';
import { App } from './App';
import { demoCase, demoOf } from './demos';
import { followFoot } from './feet';
import { footMakers } from './foot-makers';
import { followLook } from './look';
import { reportStrangers } from './strangers';
import { trustedWorkerUrl } from './trusted-types';
import { usualFoot, usualSections } from './usual-foot';

const content = await loadContent();
const linked = location.hash;
const plain = linked.length <= 1;
const asked: Address = { ...readAddress(linked), ...(plain ? { page: 'start' } : {}) };
/** Who comes to these begins with no case: an invented one would only have to be cleared away. */
const begins = (['start', 'new', 'walk', 'find'] as const).some((page) => page === asked.page);
/** What this device has kept is there before the first screen is, unless reading it takes longer than this, ms. */
const KEPT_WITHIN_MS = 800;
const usual = usualFoot(content.shape, 'display');
const usualFine = usualFoot(content.shape, 'fine');
const sections = usualSections();
let foot: Foot | null = null;
void usual.then((read) => {
  foot = read;
});
const makeRunner = () =>
  createExplainRunner({
    content,
    foot: usualFine,
    sections,
    makeWorker: () => new Worker(trustedWorkerUrl(explainWorkerUrl), { type: 'module' }),
  });
let bandRunner: ReturnType<typeof makeRunner> | null = null;

const session = createSession({
  content,
  file: begins && asked.demo === null ? emptyCase(NEW_CASE_ID) : demoCase(asked.demo ?? 'demo-handball'),
  runExplain: makeRunner(),
  // A worker of their own, started when the first explanation stands: bands take a second, and a slider must not wait for them.
  runBands: (request) => {
    bandRunner ??= makeRunner();
    return bandRunner(request);
  },
  checkFile: (file) => (foot === null ? [] : checkCase(file, content, foot)),
  storage: browserStorage(),
  // A link to an example shows the example, and leaves what is kept where it is.
  restore: asked.demo === null,
});
session.commands.ask(asked.question);
session.commands.setReader(asked.reader);
followLook(session);
const feet = followFoot(session, usual, footMakers(content.shape, usual, usualFine));

/** No case but the one that was kept or asked for is ever drawn, not even for a moment: so its return is waited for. */
const keptCase = async (): Promise<boolean> => {
  const tooLong = new Promise<boolean>((resolve) => setTimeout(() => resolve(false), KEPT_WITHIN_MS));
  const restored = await Promise.race([session.restored, tooLong]);
  const { file } = session.getState();
  return restored && file.claims.length > 0 && demoOf(file) === null;
};

/** Letters stand in their own type from the first on: another one first would move everything when it goes. But not for ever, ms. */
const TYPE_WITHIN_MS = 1500;
const typeIsThere = (): Promise<unknown> =>
  Promise.race([
    Promise.allSettled(
      ['16px "Atkinson Hyperlegible Next"', '700 16px Besley'].map((each) => document.fonts.load(each)),
    ),
    new Promise((resolve) => setTimeout(resolve, TYPE_WITHIN_MS)),
  ]);

const begin = async (root: HTMLElement) => {
  const [kept] = await Promise.all([keptCase(), typeIsThere()]);
  // An address that asks for nothing leads on with the person's own case, and to the start where there is none.
  if (plain) history.replaceState(null, '', writeAddress({ ...asked, page: kept ? 'explain' : 'start' }));
  reportStrangers(session, linked, location.search);
  createRoot(root).render(
    <StrictMode>
      <App session={session} feet={feet} />
    </StrictMode>,
  );
};

const root = document.getElementById('root');
if (root === null) throw new Error('The page has no root element');
void begin(root);
