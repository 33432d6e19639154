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

    /** Bundles are files of properties, and no third language stands in for one that is missing. */
    private static final Control FILES = Control.getNoFallbackControl(Control.FORMAT_PROPERTIES);

    /** The language of all sentences: English, or that of a translation, asked for as {@code -Devenfall.language=xx}. */
    private static final Locale LANGUAGE = Locale.forLanguageTag(System.getProperty("evenfall.language", "en"));

    private final Class<?> home;
    private final Locale language;
    private volatile @Nullable ResourceBundle bundle;
    /** Patterns that were read once: pages say the same sentence a thousand times. */
    private final Map<String, MessageFormat> formats = new ConcurrentHashMap<>();

    /** The sentences kept beside {@code home} in a language, in English where they were not translated. */
    Words(Class<?> home, Locale language) {
        this.home = home;
        this.language = language;
    }

    /** The sentences kept beside {@code home}. */
    public static Words beside(Class<?> home) {
        return new Words(home, LANGUAGE);
    }

    /**
     * Texts in the same language for a library that reads bundles itself.
     *
     * @param name of the bundle beside {@code home}
     */
    public static ResourceBundle bundle(Class<?> home, String name) {
        return bundle(home, name, LANGUAGE);
    }

    private static ResourceBundle bundle(Class<?> home, String name, Locale language) {
        // English is the bundle without a suffix; asked for by name it is first looked for in vain, in every library.
        Locale suffix = language.equals(Locale.ENGLISH) ? Locale.ROOT : language;
        return ResourceBundle.getBundle(home.getPackageName() + "." + name, suffix, home.getClassLoader(), FILES);
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
            format = formats.computeIfAbsent(key, asked -> new MessageFormat(pattern, language));
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
            read = bundle(home, "words", language);
            bundle = read;
        }
        return read;
    }
}
