package evenfall.report.words;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The sentences of one package, from its resource bundle {@code words}. Patterns are those of {@link MessageFormat};
 * numbers other than counts come in as text already rounded by {@link Figures}.
 */
public final class Words {

    private final ResourceBundle bundle;
    /** Patterns that were read once: pages say the same sentence a thousand times. */
    private final Map<String, MessageFormat> formats = new ConcurrentHashMap<>();

    private Words(ResourceBundle bundle) {
        this.bundle = bundle;
    }

    /** The sentences kept beside {@code home}, in English. */
    public static Words beside(Class<?> home) {
        return new Words(
                ResourceBundle.getBundle(home.getPackageName() + ".words", Locale.ENGLISH, home.getClassLoader()));
    }

    /**
     * The sentence of that key with its gaps filled.
     *
     * @throws java.util.MissingResourceException if there is none
     */
    public String say(String key, Object... gaps) {
        MessageFormat format =
                formats.computeIfAbsent(key, asked -> new MessageFormat(bundle.getString(asked), Locale.ENGLISH));
        // A format keeps its place in a field while it writes.
        synchronized (format) {
            return format.format(gaps);
        }
    }

    /** Whether there is a sentence of that key. */
    public boolean knows(String key) {
        return bundle.containsKey(key);
    }
}
