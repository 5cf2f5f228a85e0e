import type * as vscode from 'vscode';
import { registerComparisons } from './commands/compare.js';
import { Example, registerExample } from './commands/example.js';
import { registerNewSpec } from './commands/newSpec/newSpec.js';
import { registerRulePages } from './commands/rulePages.js';
import { registerPages } from './pages/pageView.js';
import type { Session } from './session.js';
import { registerSheet } from './sheet/sheetPanels.js';
import { followSpecs } from './specInView.js';
import { registerTools } from './tools/registerTools.js';
import { registerStatusBar } from './views/statusBar.js';
import { registerVesselTree } from './views/vesselTree.js';

/** Everything that desktop and browser share. */
export function registerFeatures(context: vscode.ExtensionContext, session: Session): void {
  const example = new Example(context.extensionUri);
  context.subscriptions.push(
    followSpecs(),
    registerPages(context, session),
    registerRulePages(context, session),
    registerComparisons(session),
    registerExample(example),
    registerTools(session),
    registerNewSpec(session),
    registerVesselTree(session),
    registerStatusBar(session),
    registerSheet(context, session, example),
  );
}
