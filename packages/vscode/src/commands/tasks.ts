import * as vscode from 'vscode';
import { LANGUAGE } from '../session.js';

interface CheckTask extends vscode.TaskDefinition {
  readonly command: 'check' | 'format';
  readonly paths?: readonly string[];
  readonly severity?: string;
}

/** Offers the command line as tasks whose findings land among the problems. */
export function registerTasks(): vscode.Disposable {
  return vscode.tasks.registerTaskProvider('tailshaft', {
    provideTasks: () => [make({ type: 'tailshaft', command: 'check' }, vscode.TaskScope.Workspace)],
    resolveTask: task => make(task.definition as CheckTask, task.scope ?? vscode.TaskScope.Workspace),
  });
}

function make(definition: CheckTask, scope: vscode.WorkspaceFolder | vscode.TaskScope): vscode.Task {
  const program = vscode.workspace.getConfiguration(LANGUAGE).get('commandLine.program', 'tailshaft');
  const given = [
    definition.command,
    ...(definition.command === 'format' ? ['--check'] : []),
    ...(definition.severity ? ['--severity', definition.severity] : []),
    ...(definition.paths ?? ['.']),
  ];
  const task = new vscode.Task(
    definition,
    scope,
    vscode.l10n.t('{0} all specs', definition.command),
    'tailshaft',
    new vscode.ShellExecution(program, given),
    definition.command === 'check' ? '$tailshaft' : undefined,
  );
  task.group = vscode.TaskGroup.Test;
  return task;
}
