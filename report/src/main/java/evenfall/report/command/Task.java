package evenfall.report.command;

/** What a command does once its options are read. */
interface Task {

    /**
     * Does it.
     *
     * @return the exit status, 0 where all went well
     * @throws Exception any failure; the runner turns it into a sentence and a status
     */
    int perform() throws Exception;
}
