package evenfall.report.command;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.log.DamagedFileException;
import evenfall.report.log.FileTrouble;
import evenfall.report.session.ProgramVersion;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Picks the command, runs it, and turns every failure into one sentence and an exit status. */
final class CommandRunner {

    private static final Words WORDS = Words.beside(CommandRunner.class);

    /** The bundle of what commands and options are. */
    static final String USAGE = "usage";

    /** Done. */
    static final int DONE = 0;

    /** Failed while running. */
    static final int FAILED = 1;

    /** Wrong usage. */
    static final int WRONG_USAGE = 2;

    /** The input can't be used. */
    static final int UNUSABLE_INPUT = 3;

    static {
        // Or the parser looks for a class of another language's in all libraries, which opens them at every start.
        System.setProperty("picocli.disable.closures", "true");
    }

    private final Console console;

    CommandRunner(Console console) {
        this.console = console;
    }

    int run(String... args) {
        return answer(console, () -> runOrThrow(args));
    }

    /** Does a task; whatever goes wrong becomes one sentence and an exit status. */
    static int answer(Console console, Callable<Integer> task) {
        try {
            return task.call();
        } catch (OutputClosedException e) {
            return DONE;
        } catch (DamagedFileException e) {
            console.say(String.valueOf(e.getMessage()));
            return UNUSABLE_INPUT;
        } catch (IOException e) {
            console.say(FileTrouble.sentence(e));
            return FAILED;
        } catch (UsageException e) {
            console.say(String.valueOf(e.getMessage()));
            return WRONG_USAGE;
        } catch (UnusableInputException e) {
            console.say(String.valueOf(e.getMessage()));
            return UNUSABLE_INPUT;
        } catch (OutOfMemoryError e) {
            console.say(WORDS.say("memory"));
            return FAILED;
        } catch (Exception | StackOverflowError e) {
            console.say(Sentences.ofFault(e));
            return FAILED;
        } finally {
            console.endProgress();
        }
    }

    private int runOrThrow(String... args) throws Exception {
        if (args.length == 0) {
            throw new UsageException(WORDS.say("command.which", CommandName.list()));
        }
        Optional<CommandName> name = CommandName.named(args[0]);
        if (name.isEmpty() && !args[0].startsWith("-")) {
            throw new UsageException(WORDS.say("command.unknown", args[0], CommandName.list()));
        }
        CommandLine root = new CommandLine(program());
        // Only the command asked for is built: reading the annotations of all takes time at every start.
        for (CommandName each : name.map(List::of).orElseGet(() -> asksVersion(args) ? List.of() : CommandName.ALL)) {
            root.addSubcommand(each.code(), each.create(console));
        }
        root.getSubcommands().values().forEach(CommandRunner::dress);
        dress(root);
        return parseAndCall(root, args);
    }

    /** The program itself, before a command is named. To read it from annotations would take longer than all the rest. */
    private static CommandSpec program() {
        CommandSpec program = CommandSpec.create().name(ProgramVersion.PROGRAM);
        program.usageMessage().synopsisSubcommandLabel("COMMAND");
        return program;
    }

    private static boolean asksVersion(String... args) {
        return args.length == 1 && (args[0].equals("--version") || args[0].equals("-V"));
    }

    private int parseAndCall(CommandLine root, String... args) throws Exception {
        CommandLine.ParseResult parsed;
        try {
            parsed = root.parseArgs(args);
        } catch (ParameterException e) {
            throw new UsageException(Sentences.ofUsage(e));
        }
        CommandLine.ParseResult last = parsed.hasSubcommand() ? parsed.subcommand() : parsed;
        CommandLine command = last.commandSpec().commandLine();
        if (last.isUsageHelpRequested()) {
            // Only who asks is told what there is, so only then is it read.
            root.setResourceBundle(Words.bundle(CommandRunner.class, USAGE));
            print(command.getUsageMessage(Ansi.OFF));
            return DONE;
        }
        if (last.isVersionHelpRequested()) {
            StringWriter text = new StringWriter();
            command.printVersionHelp(new PrintWriter(text), Ansi.OFF);
            print(text.toString());
            return DONE;
        }
        if (command.getCommand() instanceof Task task) {
            return task.perform();
        }
        throw new UsageException(WORDS.say("command.missing", CommandName.list()));
    }

    private void print(String text) throws IOException {
        console.results().write(text.getBytes(StandardCharsets.UTF_8));
    }

    private static void dress(CommandLine command) {
        command.getCommandSpec()
                .mixinStandardHelpOptions(true)
                .version(ProgramVersion.PROGRAM + " " + ProgramVersion.version());
        command.setUsageHelpWidth(100);
        command.setExpandAtFiles(false);
        command.setAbbreviatedOptionsAllowed(false);
    }
}
