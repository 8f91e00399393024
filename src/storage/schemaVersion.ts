/** One version of the tables' meaning; readers refuse results of another. Raise it with every change of a column. */
export const schemaVersion = 6;
