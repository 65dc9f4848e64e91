/** The system's word for what went wrong, or null if it was not the system. */
export const systemCode = (cause: unknown): string | null =>
  cause instanceof Error && 'code' in cause && typeof cause.code === 'string' ? cause.code : null;
