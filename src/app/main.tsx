/** Start-up: content, session, worker, first words; the figure comes when the words are there. */
import content from 'virtual:content';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { readAddress } from '../pages';
import '../pages/fonts.css';
import '../pages/tokens.css';
import '../pages/page.css';
import { createExplainRunner, createSession } from '../session';
import explainWorkerUrl from '../session/explain-worker?worker&url';
import { App } from './App';
import { demoCase } from './demos';
import { followFoot } from './feet';
import { followLook } from './look';
import { trustedWorkerUrl } from './trusted-types';

const asked = readAddress(location.hash);
const session = createSession({
  content,
  file: demoCase(asked.demo ?? 'demo-handball'),
  runExplain: createExplainRunner({
    content,
    makeWorker: () => new Worker(trustedWorkerUrl(explainWorkerUrl), { type: 'module' }),
  }),
});
session.commands.ask(asked.question);
session.commands.setReader(asked.reader);
followLook(session);
const feet = followFoot(session);

const root = document.getElementById('root');
if (root === null) throw new Error('The page has no root element');
createRoot(root).render(
  <StrictMode>
    <App session={session} feet={feet} />
  </StrictMode>,
);
