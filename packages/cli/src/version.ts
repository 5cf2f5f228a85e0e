declare const __TAILSHAFT_VERSION__: string | undefined;

/** Written in by the build from package.json. */
export const VERSION: string = typeof __TAILSHAFT_VERSION__ === 'string' ? __TAILSHAFT_VERSION__ : 'unbuilt';
