import { spawn } from 'node:child_process';
import { root } from './repo.mjs';

/**
 * @typedef {object} Outcome
 * @property {number} code     exit code; 1 when the command was killed or could not be started
 * @property {string} output   what it printed, empty when it printed straight to the terminal
 * @property {number} seconds
 */

/**
 * Runs one command from the repository root.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ quiet?: boolean, shell?: boolean, env?: Record<string, string> }} [options]
 *   quiet: keep the output instead of showing it, so that commands running together do not mix their lines
 * @returns {Promise<Outcome>}
 */
export function run(command, args, options = {}) {
  const started = Date.now();
  return new Promise((resolve) => {
    const child = spawn(command, [...args], {
      cwd: root,
      stdio: options.quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'],
      shell: options.shell ?? false,
      env: { ...process.env, ...options.env },
    });
    let output = '';
    child.stdout?.setEncoding('utf8').on('data', (text) => (output += text));
    child.stderr?.setEncoding('utf8').on('data', (text) => (output += text));
    const finish = (/** @type {number} */ code) =>
      resolve({ code, output, seconds: (Date.now() - started) / 1000 });
    child.on('error', (error) => {
      output += `${command} could not be started: ${error.message}\n`;
      if (!options.quiet) console.error(output);
      finish(1);
    });
    child.on('close', (code) => finish(code ?? 1));
  });
}

/**
 * Runs a script with the Node that runs us.
 * @param {readonly string[]} args
 * @param {{ quiet?: boolean, env?: Record<string, string> }} [options]
 */
export const runNode = (args, options) => run(process.execPath, args, options);
