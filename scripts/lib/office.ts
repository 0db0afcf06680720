import { execFileSync } from 'node:child_process';

/** The name by which LibreOffice starts here; undefined where it is not installed. */
export function findOffice(): string | undefined {
  return ['soffice', 'libreoffice'].find((name) => {
    try {
      execFileSync(name, ['--version'], { stdio: 'ignore' });
      return true;
    } catch {
      return false;
    }
  });
}
