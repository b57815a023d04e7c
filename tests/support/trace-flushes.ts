/** Watches which files a process flushes to the disk. Linux only. */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

export interface FlushTracing {
  /** How many calls of fsync and fdatasync there were so far on files with such paths. */
  readonly flushesOf: (path: RegExp) => number;
  readonly stop: () => Promise<void>;
}

const hasTracer = () => spawnSync('strace', ['-V'], { stdio: 'ignore' }).status === 0;

/**
 * Makes sure that strace is there; installs it on Debian as root.
 *
 * @throws {Error} where there is none and none can be installed
 */
export function haveSystemCallTracer(): void {
  if (hasTracer()) return;
  const release = existsSync('/etc/os-release') ? readFileSync('/etc/os-release', 'utf8') : '';
  if (/^ID=debian$/m.test(release) && process.getuid?.() === 0) {
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const apt = (...args: readonly string[]) =>
      spawnSync('apt-get', ['-o', 'DPkg::Lock::Timeout=600', ...args], { stdio: 'ignore', env });
    apt('update');
    apt('install', '-y', '--no-install-recommends', 'strace');
  }
  if (!hasTracer())
    throw new Error('To see that taps reach the disk this test needs strace: apt-get install strace');
}

/** Traces `pid` with all its threads, into `file`; resolves once it is traced. */
export async function traceFlushes(pid: number, file: string): Promise<FlushTracing> {
  const calls = 'trace=fsync,fdatasync';
  const tracer = spawn('strace', ['-f', '-y', '-e', calls, '-o', file, '-p', String(pid)]);
  const ended = new Promise<void>((resolve) => tracer.once('exit', () => resolve()));
  await new Promise<void>((resolve, reject) => {
    let said = '';
    tracer.stderr.on('data', (words) => {
      said += words;
      if (/attached/.test(said)) resolve();
    });
    ended.then(() => reject(new Error(`The browser cannot be traced: ${said}`)));
  });
  return {
    flushesOf: (path) =>
      readFileSync(file, 'utf8')
        .split('\n')
        // A call that another thread interrupts takes two lines, the second without the path.
        .filter((line) => /\bf(data)?sync\(/.test(line) && path.test(line)).length,
    async stop() {
      tracer.kill('SIGINT');
      await ended;
    },
  };
}
