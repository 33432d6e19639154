package evenfall.ingest.progress;

import evenfall.ingest.words.Words;

/** Told by long work how far it has come; called from the thread that works, at most some thousand times a run. */
@FunctionalInterface
public interface Progress {

    /** Listens to nothing. */
    Progress NONE = (stage, share) -> {};

    /**
     * Work has come so far.
     *
     * @param stage what is being done, as a person would say it ("reading pelvis.csv")
     * @param share done share of this stage, 0 to 1
     */
    void at(String stage, double share);

    /** The same, of a stage whose words are looked up only if somebody listens. */
    default void at(Words words, String stage, double share) {
        if (this != NONE) {
            at(words.say(stage), share);
        }
    }
}
