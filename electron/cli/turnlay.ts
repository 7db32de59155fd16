// The command line: lay a brief out, send a job to the RIP, prove what was written, or see it all in a demo.
import { Command } from 'commander';

/** A command is loaded when it is given, so that help and slips are answered at once. */
const lazily =
  <A extends readonly unknown[]>(load: () => Promise<(...args: A) => Promise<void>>) =>
  async (...args: A) =>
    (await load())(...args);

const program = new Command('turnlay')
  .description(
    'Lays out, sends and proves two-sided jobs on cut sheets, so that every back lies behind its own front.',
  )
  .showHelpAfterError();

program
  .command('lay <brief>')
  .description('lay out a brief (JSON) with its art, and save it as a job')
  .requiredOption('--job <file>', 'the job file to save')
  .option('--json', 'answer in JSON', false)
  .action(lazily(async () => (await import('./layCommand.ts')).lay));

program
  .command('plan <brief>')
  .description('every way to print a brief with a library of printers and papers, and what it costs')
  .requiredOption('--library <file>', 'the library of printers and papers (JSON)')
  .option(
    '--coverage <total>',
    'take this for the coverage of every face, all inks together, 0 to 4, and do not measure it',
  )
  .option('--by <what>', 'rank by cost, time or waste', 'cost')
  .option('--json', 'answer in JSON', false)
  .action(lazily(async () => (await import('./planCommand.ts')).plan));

program
  .command('gang <brief>')
  .description(
    'a gang run: several designs of one size on the same forms, so that sheets and forms cost least',
  )
  .requiredOption('--sheet-cost <amount>', 'what one sheet costs: paper, ink and time')
  .requiredOption(
    '--form-cost <amount>',
    'what one form costs before its first sheet: files, plates, make-ready',
  )
  .option('--most-forms <number>', 'make no more forms than these')
  .option('--seconds <number>', 'how long may be planned', '10')
  .option('--json', 'answer in JSON', false)
  .action(lazily(async () => (await import('./gangCommand.ts')).gang));

program
  .command('send <job>')
  .description('write the sheets of a job into the folder of the RIP, proved, whole or not at all')
  .requiredOption('--to <folder>', 'the folder of the RIP')
  .option('--pictures <folder>', 'save a picture of every piece, front beside back')
  .option('--overwrite', 'replace files of the same names', false)
  .option('--despite-findings', 'send though the proof finds faults', false)
  .option('--json', 'answer in JSON', false)
  .action(lazily(async () => (await import('./sendCommand.ts')).send));

program
  .command('prove <job>')
  .description('compare the sheets in a folder with the art of their job')
  .requiredOption('--from <folder>', 'the folder that the job was sent to')
  .option('--pictures <folder>', 'save a picture of every piece, front beside back')
  .option('--json', 'answer in JSON', false)
  .action(lazily(async () => (await import('./proveCommand.ts')).proveFolder));

program
  .command('ticket <job>')
  .description('write the run sheet, the dummy, the cutting order and the open job ticket of a job')
  .requiredOption('--to <folder>', 'the folder for them')
  .option('--library <file>', 'the library of printers and papers')
  .option('--paper <name>', 'the paper that is loaded, as the library calls it')
  .option('--json', 'answer in JSON', false)
  .action(lazily(async () => (await import('./ticketCommand.ts')).ticket));

program
  .command('demo <folder>')
  .description('draw the art of an invented job and run it from brief to proved sheets')
  .action(lazily(async () => (await import('./demoCommand.ts')).demo));

await program.parseAsync();
