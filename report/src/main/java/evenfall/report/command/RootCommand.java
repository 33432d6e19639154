package evenfall.report.command;

import picocli.CommandLine.Command;

/** The program itself, before a command is named. */
@Command(name = "evenfall", synopsisSubcommandLabel = "COMMAND")
final class RootCommand {}
