import './app/wire/noEval.ts';
import { render } from 'preact';
import { App } from './app/App.tsx';
import { readQuerySwitches } from './app/querySwitches.ts';
import { browserServices } from './app/wire/browserServices.ts';
import { keepForOffline } from './app/wire/keepForOffline.ts';

const services = browserServices(readQuerySwitches(location.search));
render(<App services={services} />, document.getElementById('page')!);
keepForOffline();
