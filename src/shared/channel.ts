/** The one IPC channel between the Electron preload and the shell. */
export const ASK_CHANNEL = 'lapwright:ask';
