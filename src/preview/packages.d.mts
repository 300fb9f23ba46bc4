export declare const sheetEngineAlias: (root: string) => { readonly find: RegExp; readonly replacement: string }[];
