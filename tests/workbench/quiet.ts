export const quietWorkbench = {
  productConfiguration: {
    nameShort: 'Workbench',
    nameLong: 'Workbench under test',
    enableTelemetry: false,
    extensionsGallery: undefined,
  },
  settingsSyncOptions: { enabled: false },
};

/** Nothing pops up by itself, and the editor does not help with typing behind the test's back. */
export const quietSettings = {
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'chat.disableAIFeatures': true,
  'telemetry.telemetryLevel': 'off',
  'editor.minimap.enabled': false,
  'editor.hover.delay': 100,
  'explorer.compactFolders': false,
  'files.autoSave': 'off',
  'window.menuBarVisibility': 'compact',
};
