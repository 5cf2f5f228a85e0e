import type * as vscode from 'vscode';
import { registerComparisons } from './commands/compare.js';
import { Example, registerExample } from './commands/example.js';
import { registerMarks } from './commands/mark-changes.js';
import { registerNewSpec } from './commands/new-spec/new-spec.js';
import { registerRulePages } from './commands/rule-pages.js';
import { registerPages } from './pages/page-view.js';
import type { Session } from './session.js';
import { registerSheet } from './sheet/sheet-panels.js';
import { followSpecs } from './spec-in-view.js';
import { registerTools } from './tools/register-tools.js';
import { registerStatusBar } from './views/status-bar.js';
import { registerVesselTree } from './views/vessel-tree.js';

/** Everything that desktop and browser share. */
export function registerFeatures(context: vscode.ExtensionContext, session: Session): void {
  const example = new Example(context.extensionUri);
  context.subscriptions.push(
    followSpecs(),
    registerPages(context, session),
    registerRulePages(context, session),
    registerComparisons(session),
    registerMarks(session),
    registerExample(example),
    registerTools(session),
    registerNewSpec(session),
    registerVesselTree(session),
    registerStatusBar(session),
    registerSheet(context, session, example),
  );
}
