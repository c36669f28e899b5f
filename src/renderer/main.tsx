/** Entry of the page. */
import { render } from 'solid-js/web';
import { App } from './App.tsx';
import { findBridge } from './bridge.ts';
import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/job.css';
import './styles/bar.css';
import './styles/joints.css';
import './styles/corners.css';
import './styles/size.css';
import './styles/inputs.css';
import './styles/materials.css';
import './styles/figures.css';
import './styles/section.css';
import './styles/margins.css';
import './styles/springs.css';
import './styles/working.css';
import './styles/compare.css';
import './styles/compare-table.css';
import './styles/find.css';
import './styles/gap.css';
import './styles/bench-card.css';
import './styles/study.css';

const root = document.getElementById('app');
if (root) render(() => <App bridge={findBridge(window)} />, root);
