package evenfall.report.command;

import picocli.CommandLine.Command;

/** The program itself, before a command is named. */
@Command(
        name = "evenfall",
        description = "An honest account of how a person lands, from two strap-on motion sensors.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "'evenfall COMMAND --help' tells what a command takes.",
            "Exit status: 0 done, 1 failed while running, 2 wrong usage, 3 the input can't be used.",
            "Not a medical device. Pain means stop."
        })
final class RootCommand {}
