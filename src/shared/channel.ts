/** The channels between the Electron preload and the shell. */
export const ASK_CHANNEL = 'lapwright:ask';
/** From the shell: a command of the menu. */
export const COMMAND_CHANNEL = 'lapwright:command';
/** From the preload: the path of a file that the user dropped on the window or chose in it. */
export const GIVEN_CHANNEL = 'lapwright:given';
