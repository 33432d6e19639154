package evenfall.ingest.words;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * The sentences of one package, from its resource bundle {@code words}. Patterns are those of {@link MessageFormat};
 * numbers other than counts come in as text already rounded.
 *
 * <p>The bundle is read when the first sentence is asked for, so a package that has nothing to say costs nothing.
 */
public final class Words {

    /** Bundles are files of properties, and one language does not stand in for another. */
    private static final Control FILES = Control.getNoFallbackControl(Control.FORMAT_PROPERTIES);

    private final Class<?> home;
    private volatile @Nullable ResourceBundle bundle;
    /** Patterns that were read once: pages say the same sentence a thousand times. */
    private final Map<String, MessageFormat> formats = new ConcurrentHashMap<>();

    private Words(Class<?> home) {
        this.home = home;
    }

    /** The sentences kept beside {@code home}, in English. */
    public static Words beside(Class<?> home) {
        return new Words(home);
    }

    /**
     * The sentence of that key with its gaps filled.
     *
     * @throws java.util.MissingResourceException if there is none
     */
    public String say(String key, Object... gaps) {
        MessageFormat format = formats.get(key);
        if (format == null) {
            String pattern = bundle().getString(key);
            if (pattern.indexOf('{') < 0 && pattern.indexOf('\'') < 0) {
                return pattern;
            }
            format = formats.computeIfAbsent(key, asked -> new MessageFormat(pattern, Locale.ENGLISH));
        }
        // A format keeps its place in a field while it writes.
        synchronized (format) {
            return format.format(gaps);
        }
    }

    /** Whether there is a sentence of that key. */
    public boolean knows(String key) {
        return bundle().containsKey(key);
    }

    private ResourceBundle bundle() {
        ResourceBundle read = bundle;
        if (read == null) {
            read = ResourceBundle.getBundle(
                    home.getPackageName() + ".words", Locale.ENGLISH, home.getClassLoader(), FILES);
            bundle = read;
        }
        return read;
    }
}
