import type { Outline, OutlineCheck, OutlineNode } from '@tailshaft/language/server';
import { signedPercent } from '@tailshaft/mechanics';
import * as vscode from 'vscode';
import { once } from '../once.js';
import type { Session } from '../session.js';
import { checkIcon, icon, iconName, standing } from './standing.js';

type Node =
  | { readonly kind: 'folder'; readonly words: string; readonly outlines: readonly Outline[] }
  | {
      readonly kind: 'node';
      readonly uri: string;
      readonly vessel: string;
      readonly node: OutlineNode;
      /** One of many: folded, and below the name of its folder. */
      readonly grouped?: boolean;
    }
  | { readonly kind: 'checks'; readonly words: string; readonly checks: readonly OutlineCheck[] }
  | { readonly kind: 'check'; readonly check: OutlineCheck };

/** Vessels, arrangements, lines and checks of all specs that were read. */
export function registerVesselTree(session: Session): vscode.Disposable {
  const tree = new VesselTree(session);
  const refresh = once(() => void tree.refresh(), 200);
  const view = vscode.window.createTreeView('tailshaft.vessels', {
    treeDataProvider: tree,
    showCollapseAll: true,
  });
  return vscode.Disposable.from(
    view,
    session.onChecked(refresh),
    vscode.workspace.onDidDeleteFiles(refresh),
    vscode.commands.registerCommand('tailshaft.refreshVessels', () => tree.refresh()),
    vscode.commands.registerCommand('tailshaft.showSheetOfNode', (node: Node) => {
      if (node.kind !== 'node') return undefined;
      const line = node.node.kind === 'vessel' ? undefined : node.node.path;
      return vscode.commands.executeCommand('tailshaft.showSheet', node.uri, node.vessel, line);
    }),
    vscode.commands.registerCommand('tailshaft.explainNode', (node: Node) =>
      node.kind === 'check'
        ? vscode.commands.executeCommand('tailshaft.explainRule', node.check.rule)
        : undefined,
    ),
  );
}

class VesselTree implements vscode.TreeDataProvider<Node> {
  private readonly changed = new vscode.EventEmitter<undefined>();
  readonly onDidChangeTreeData = this.changed.event;
  private outlines: Promise<readonly Outline[]> | undefined;

  constructor(private readonly session: Session) {}

  /** Asks anew, and tells the view only when something reads differently. */
  async refresh(): Promise<void> {
    if (!this.outlines) return;
    const [before, now] = await Promise.all([this.outlines, this.ask()]);
    if (JSON.stringify(before) === JSON.stringify(now)) return;
    this.outlines = Promise.resolve(now);
    this.changed.fire(undefined);
  }

  async getChildren(parent?: Node): Promise<Node[]> {
    if (!parent) {
      this.outlines ??= this.ask();
      return grouped(await this.outlines);
    }
    if (parent.kind === 'folder')
      return parent.outlines.flatMap(roots).map((one): Node => ({ ...one, grouped: true }));
    if (parent.kind === 'node') {
      const { node, uri, vessel } = parent;
      return [
        ...node.children.map((child): Node => ({ kind: 'node', uri, vessel, node: child })),
        ...checksOf(node.checks),
      ];
    }
    if (parent.kind === 'checks') return parent.checks.map(check => ({ kind: 'check', check }));
    return [];
  }

  private async ask(): Promise<readonly Outline[]> {
    return (await this.session.request('tailshaft/vessels', {})) ?? [];
  }

  getTreeItem(one: Node): vscode.TreeItem {
    if (one.kind === 'node') return nodeItem(one);
    if (one.kind === 'check') return checkItem(one.check);
    if (one.kind === 'folder') return folderItem(one);
    const item = new vscode.TreeItem(one.words, vscode.TreeItemCollapsibleState.Collapsed);
    item.iconPath = new vscode.ThemeIcon('checklist');
    return item;
  }
}

/** So many vessels are looked through one by one; more are put together by their folders. */
const MOST_AT_ONCE = 12;

function grouped(outlines: readonly Outline[]): Node[] {
  const count = outlines.reduce((sum, one) => sum + one.vessels.length, 0);
  const folders = new Map<string, Outline[]>();
  for (const one of outlines.filter(each => each.vessels.length > 0)) {
    const folder = folderOf(one.uri);
    folders.set(folder, [...(folders.get(folder) ?? []), one]);
  }
  if (count <= MOST_AT_ONCE || folders.size < 2) return outlines.flatMap(roots);
  return [...folders].map(([words, inside]): Node => ({ kind: 'folder', words, outlines: inside }));
}

/** `boats/north`; the name of the workspace folder for what lies in it itself. */
function folderOf(address: string): string {
  const uri = vscode.Uri.parse(address);
  const folder = vscode.Uri.joinPath(uri, '..');
  const root = vscode.workspace.getWorkspaceFolder(uri);
  return root?.uri.path === folder.path ? root.name : vscode.workspace.asRelativePath(folder);
}

function folderItem({ words, outlines }: Extract<Node, { kind: 'folder' }>): vscode.TreeItem {
  const vessels = outlines.flatMap(one => one.vessels);
  const sum = (of: (one: OutlineNode) => number) => vessels.reduce((total, one) => total + of(one), 0);
  const counts = {
    held: sum(one => one.counts.held),
    failed: sum(one => one.counts.failed),
    unknown: sum(one => one.counts.unknown),
    accepted: sum(one => one.counts.accepted),
    asFound: sum(one => one.counts.asFound),
  };
  const gravity = { errors: sum(one => one.errors), warnings: sum(one => one.warnings) };
  const item = new vscode.TreeItem(words, vscode.TreeItemCollapsibleState.Collapsed);
  item.id = `folder ${words}`;
  item.description = vscode.l10n.t('{0} vessels: {1}', vessels.length, standing(counts));
  item.iconPath = icon(counts.failed + counts.unknown > 0 ? iconName(counts, gravity) : 'folder');
  item.contextValue = 'folder';
  item.accessibilityInformation = { label: `${words}: ${item.description}` };
  return item;
}

const roots = ({ uri, vessels }: Outline): Extract<Node, { kind: 'node' }>[] =>
  vessels.map(node => ({ kind: 'node', uri, vessel: node.name, node }));

/** What asks for attention stands in the open, what holds is folded away. */
function checksOf(checks: readonly OutlineCheck[]): Node[] {
  const quiet = (one: OutlineCheck) => one.outcome === 'holds' || one.outcome === 'does not apply';
  const held = checks.filter(quiet);
  return [
    ...checks.filter(one => !quiet(one)).map((check): Node => ({ kind: 'check', check })),
    ...(held.length > 0
      ? [
          {
            kind: 'checks' as const,
            words: vscode.l10n.t('{0} hold or do not apply', held.length),
            checks: held,
          },
        ]
      : []),
  ];
}

function nodeItem({ node, uri, grouped: isGrouped }: Extract<Node, { kind: 'node' }>): vscode.TreeItem {
  const open =
    !isGrouped && !node.asFound && (node.kind !== 'line' || node.counts.failed + node.counts.unknown > 0);
  const { Expanded, Collapsed } = vscode.TreeItemCollapsibleState;
  const item = new vscode.TreeItem(node.name, open ? Expanded : Collapsed);
  item.id = `${uri} ${node.kind} ${node.path}`;
  // Two vessels of one name are told apart by where they lie.
  const file = vscode.workspace.asRelativePath(vscode.Uri.parse(uri));
  item.description =
    node.kind === 'vessel'
      ? `${isGrouped ? file.split('/').at(-1) : file} · ${standing(node.counts)}`
      : standing(node.counts);
  item.iconPath = icon(iconName(node.counts, node));
  item.tooltip = [node.title, node.worst, standing(node.counts), file].filter(Boolean).join('\n');
  item.contextValue = node.kind;
  if (node.location) item.command = openAt(node.location);
  item.accessibilityInformation = { label: `${node.kind} ${node.name}: ${standing(node.counts)}` };
  return item;
}

function checkItem(check: OutlineCheck): vscode.TreeItem {
  const item = new vscode.TreeItem(check.title);
  item.description =
    check.margin === undefined ? check.rule : `${signedPercent(check.margin)}  ${check.rule}`;
  item.iconPath = checkIcon(check);
  item.tooltip = new vscode.MarkdownString(`**${check.outcome}** · ${check.subject}\n\n`).appendText(
    check.message,
  );
  item.contextValue = 'check';
  if (check.location) item.command = openAt(check.location);
  item.accessibilityInformation = { label: `${check.outcome}: ${check.title}. ${check.message}` };
  return item;
}

interface Location {
  readonly uri: string;
  readonly range: {
    readonly start: { readonly line: number; readonly character: number };
    readonly end: { readonly line: number; readonly character: number };
  };
}

function openAt({ uri, range: { start, end } }: Location): vscode.Command {
  const selection = new vscode.Range(start.line, start.character, end.line, end.character);
  return {
    command: 'vscode.open',
    title: vscode.l10n.t('Go to the text'),
    arguments: [vscode.Uri.parse(uri), { selection }],
  };
}
