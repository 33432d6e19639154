package evenfall.report.log;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.setting.SettingList;
import evenfall.report.setting.SettingText;
import evenfall.report.setting.SettingValue;
import evenfall.report.setting.Settings;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The coach's settings files of a log: one at its top for all athletes, one in an athlete's folder for that athlete. */
final class SettingFiles {

    /** Many times what all settings with their explanations take. */
    private static final long LARGEST = 1L << 20;

    private static final Words WORDS = Words.beside(SettingText.class);

    private SettingFiles() {}

    /**
     * What holds.
     *
     * @param folders where files may lie; those of a later one go before those of an earlier one
     * @throws UnusableInputException if a file cannot be understood; says where and what would be
     */
    static Settings read(SettingList list, List<@Nullable Path> folders) throws IOException {
        Settings settings = Settings.starting(list);
        for (Path folder : folders) {
            if (folder != null) {
                settings = settings.with(read(list, folder.resolve(list.file())));
            }
        }
        return settings;
    }

    private static List<SettingValue> read(SettingList list, Path file) throws IOException {
        if (!Files.exists(file)) {
            return List.of();
        }
        if (Files.size(file) > LARGEST) {
            throw new UnusableInputException(WORDS.say("too.large", file));
        }
        try {
            return SettingText.read(list, file.toString(), Files.readString(file));
        } catch (CharacterCodingException e) {
            throw new UnusableInputException(WORDS.say("not.text", file), e);
        }
    }

    /**
     * Writes a file that explains every setting and changes none, for its owner only.
     *
     * @return the file; empty if there is one already, which stays as it is
     */
    static Optional<Path> writeStarting(SettingList list, Path folder) throws IOException {
        Path file = folder.resolve(list.file());
        if (Files.exists(file)) {
            return Optional.empty();
        }
        WholeFile.writePrivate(file, SettingText.starting(list));
        return Optional.of(file);
    }
}
