package evenfall.report.log;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.EnumSet;
import java.util.function.Consumer;
import java.util.zip.CRC32;
import java.util.zip.CheckedOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;
import org.jspecify.annotations.Nullable;

/**
 * Takes an athlete out of an archive into a log at one stroke: everything is unpacked into a hidden folder, checked, and
 * renamed. Nothing that is in the log already is touched.
 */
public final class ArchiveImport {

    private static final Words WORDS = Words.beside(ArchiveImport.class);

    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private ArchiveImport() {}

    /**
     * Imports.
     *
     * @param name under which name, or null for the archive's own
     * @param tell told, in a sentence, if another program has to be waited for
     * @return the athlete
     * @throws UnusableInputException if the file is no archive of an athlete, is damaged, or the athlete is in the log already
     */
    public static AthleteFolder read(TrainingLog log, Path file, @Nullable String name, Consumer<String> tell)
            throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8)) {
            ArchiveEntries entries = ArchiveEntries.of(file, zip);
            AthleteFolder athlete = log.athlete(name == null ? entries.athlete() : name);
            try (LogLock lock = LogLock.take(log.folder(), PATIENCE, tell)) {
                if (!lock.guards(log.folder()) || Files.exists(athlete.folder())) {
                    throw new UnusableInputException(WORDS.say("archive.known", athlete.id(), log.folder()));
                }
                unpack(file, entries, athlete);
            }
            return athlete;
        } catch (ZipException | EOFException | FileAlreadyExistsException | IllegalArgumentException e) {
            throw damaged(file, String.valueOf(e.getMessage()), e);
        }
    }

    private static void unpack(Path file, ArchiveEntries entries, AthleteFolder athlete) throws IOException {
        Path hidden = athlete.folder().resolveSibling("." + athlete.id() + WholeFile.TEMPORARY);
        FolderRemoval.of(hidden);
        try (InputStream bytes = Files.newInputStream(file);
                ZipInputStream zip = new ZipInputStream(new BufferedInputStream(bytes), StandardCharsets.UTF_8)) {
            new AthleteFolder(athlete.id(), hidden).create();
            int files = 0;
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (!entry.isDirectory()) {
                    unpack(file, zip, entries.of(file, entry.getName()), hidden);
                    files++;
                }
            }
            int listed = entries.files().size();
            if (files != listed) {
                throw damaged(file, WORDS.say("archive.count", listed, String.valueOf(listed), files), null);
            }
            Files.move(hidden, athlete.folder());
            WholeFile.syncFolder(athlete.folder().toAbsolutePath().getParent());
        } finally {
            FolderRemoval.of(hidden);
        }
    }

    /** The list at an archive's end and what stands before each file must say the same: what fits neither was damaged. */
    private static void unpack(Path file, ZipInputStream zip, ArchiveEntries.Listed listed, Path folder)
            throws IOException {
        Path to = folder.resolve(listed.path());
        Path parent = to.getParent();
        OwnerOnly.makeFolders(parent == null ? folder : parent);
        CRC32 sum = new CRC32();
        try (OutputStream out =
                OwnerOnly.open(to, EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE))) {
            zip.transferTo(new CheckedOutputStream(out, sum));
        }
        if (sum.getValue() != listed.sum()) {
            throw damaged(file, WORDS.say("archive.sum", listed.path()), null);
        }
        WholeFile.sync(to);
        WholeFile.syncFolder(parent);
    }

    static UnusableInputException damaged(Path file, String why, @Nullable Throwable cause) {
        UnusableInputException damaged = new UnusableInputException(WORDS.say("archive.damaged", file, why));
        if (cause != null) {
            damaged.initCause(cause);
        }
        return damaged;
    }
}
