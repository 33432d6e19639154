package evenfall.report.command;

import picocli.CommandLine.Command;

/**
 * The program itself, before a command is named. Like every command it says that none of its methods are commands: to look for
 * such methods takes longer than to read all the rest.
 */
@Command(name = "evenfall", addMethodSubcommands = false, synopsisSubcommandLabel = "COMMAND")
final class RootCommand {}
