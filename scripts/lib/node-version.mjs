// Must stay readable by old versions of Node: it is the first thing that runs.
const oldest = [20, 19];

export function requireNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [needMajor = 0, needMinor = 0] = oldest;
  if (major > needMajor || (major === needMajor && minor >= needMinor)) return;
  console.error(
    `Latchward needs Node.js ${oldest.join('.')} or newer, and this is Node.js ${process.versions.node}. ` +
      'Install a newer version (https://nodejs.org) and run the command again.',
  );
  process.exit(1);
}
