/**
 * Runs the body of a script and turns a thrown error into one sentence instead of a stack trace.
 * @param {() => Promise<void>} body
 */
export async function main(body) {
  try {
    await body();
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
