/** Start-up: content, session, worker, first words; the figure comes when the words are there. */
import content from 'virtual:content';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import type { Foot } from '../anatomy/types';
import { checkCase } from '../checks';
import { readAddress } from '../pages';
import '../pages/fonts.css';
import '../pages/tokens.css';
import '../pages/page.css';
import { browserStorage, createExplainRunner, createSession } from '../session';
import explainWorkerUrl from '../session/explain-worker?worker&url';
import { App } from './App';
import { demoCase } from './demos';
import { followFoot } from './feet';
import { footMakers } from './foot-makers';
import { followLook } from './look';
import { trustedWorkerUrl } from './trusted-types';
import { usualFoot } from './usual-foot';

const asked = readAddress(location.hash);
const usual = usualFoot(content.shape, 'display');
const usualFine = usualFoot(content.shape, 'fine');
let foot: Foot | null = null;
void usual.then((read) => {
  foot = read;
});
const session = createSession({
  content,
  file: demoCase(asked.demo ?? 'demo-handball'),
  runExplain: createExplainRunner({
    content,
    foot: usualFine,
    makeWorker: () => new Worker(trustedWorkerUrl(explainWorkerUrl), { type: 'module' }),
  }),
  checkFile: (file) => (foot === null ? [] : checkCase(file, content, foot)),
  storage: browserStorage(),
  // A link to an example shows the example, and leaves what is kept where it is.
  restore: asked.demo === null,
});
session.commands.ask(asked.question);
session.commands.setReader(asked.reader);
followLook(session);
const feet = followFoot(session, usual, footMakers(content.shape, usual, usualFine));

const root = document.getElementById('root');
if (root === null) throw new Error('The page has no root element');
createRoot(root).render(
  <StrictMode>
    <App session={session} feet={feet} />
  </StrictMode>,
);
