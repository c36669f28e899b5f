/** Changes whenever a figure that the model gives can change. Stands on every report. */
export const MODEL_VERSION = '2';
