/** Entry of the page. */
import { render } from 'solid-js/web';
import { App } from './App.tsx';
import { findBridge } from './bridge.ts';
import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/job.css';
import './styles/bar.css';
import './styles/keys.css';
import './styles/files.css';
import './styles/menu.css';
import './styles/units.css';
import './styles/joints.css';
import './styles/corners.css';
import './styles/size.css';
import './styles/inputs.css';
import './styles/materials.css';
import './styles/editors.css';
import './styles/figures.css';
import './styles/section.css';
import './styles/margins.css';
import './styles/springs.css';
import './styles/working.css';
import './styles/compare.css';
import './styles/compare-table.css';
import './styles/find.css';
import './styles/gap.css';
import './styles/paper.css';
import './styles/bench-card.css';
import './styles/coupons.css';
import './styles/coupon-tables.css';
import './styles/ledger.css';
import './styles/pieces.css';
import './styles/test-sheet.css';
import './styles/sheet-page.css';
import './styles/sheet-view.css';
import './styles/study.css';
import './styles/help.css';
import './styles/guide.css';
import './styles/about.css';
import './styles/narrow.css';
import './styles/access.css';

const root = document.getElementById('app');
if (root) {
  const bridge = findBridge(window);
  render(() => <App bridge={bridge} />, root);
}
