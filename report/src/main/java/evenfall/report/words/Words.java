package evenfall.report.words;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The sentences of one package, from its resource bundle {@code words}. Patterns are those of {@link MessageFormat};
 * numbers other than counts come in as text already rounded by {@link Figures}.
 */
public final class Words {

    private final ResourceBundle bundle;

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
        return new MessageFormat(bundle.getString(key), Locale.ENGLISH).format(gaps);
    }

    /** Whether there is a sentence of that key. */
    public boolean knows(String key) {
        return bundle.containsKey(key);
    }
}
