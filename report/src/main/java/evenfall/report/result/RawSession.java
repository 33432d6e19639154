package evenfall.report.result;

import evenfall.ingest.parallel.Aside;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recorder.KeptRecording;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.log.Manifest;
import evenfall.report.log.RawFile;
import evenfall.report.log.SessionFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** What was recorded of one session, as it lies in the log: tables that were imported, or bytes as they came. It never changes. */
final class RawSession {

    private static final Words WORDS = Words.beside(RawSession.class);

    private final SessionFolder folder;
    private final Manifest manifest;
    private final Consumer<String> tell;
    private @Nullable Aside<List<String>> checked;

    /** Of a session that is in the log; {@code tell} is told of files that are not what was stored. */
    RawSession(SessionFolder folder, Consumer<String> tell) throws IOException {
        this.folder = folder;
        this.manifest = folder.manifest();
        this.tell = tell;
    }

    /** What the files were called when they came. */
    List<String> names() {
        if (live()) {
            return List.of("recorded live");
        }
        return manifest.files().stream()
                .filter(file -> !"layout".equals(file.role()))
                .map(RawFile::original)
                .toList();
    }

    /** Whether it is being recorded. */
    boolean growing() throws IOException {
        return live() && KeptRecording.beingWritten(folder.rawFolder());
    }

    /** Its samples. */
    Recording read(Progress progress) throws IOException {
        return live() ? KeptRecording.read(folder.rawFolder(), progress) : tables().read(progress);
    }

    /** Begins to look whether the files are what was stored: it takes as long as it takes to read them. */
    void beginCheck() {
        checked = Aside.start("check raw files", this::changed);
    }

    /** Tells which files are not, byte for byte, what was stored. */
    void tellOfChanged() throws IOException {
        try {
            for (String name : checked == null ? changed() : checked.result()) {
                tell.accept(WORDS.say("raw.changed", name, folder.date()));
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private List<String> changed() {
        try {
            return live() ? List.of() : folder.changedRawFiles(manifest);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean live() {
        return manifest.kind().equals(Manifest.WIRE);
    }

    private RecordingInput tables() {
        if (!manifest.kind().equals(Manifest.TABLES)) {
            throw new UnusableInputException(WORDS.say("session.kind", folder.date(), manifest.kind()));
        }
        for (RawFile file : manifest.files()) {
            if (!Files.isRegularFile(folder.raw(file.name()))) {
                throw new UnusableInputException(
                        WORDS.say("raw.missing", file.name(), folder.date(), folder.rawFolder()));
            }
        }
        Path pelvis = file("pelvis");
        if (pelvis == null) {
            throw new UnusableInputException(WORDS.say("session.pelvis", folder.date()));
        }
        return new RecordingInput(pelvis, file("upper-back"), file("layout"));
    }

    private @Nullable Path file(String role) {
        return manifest.files().stream()
                .filter(file -> file.role().equals(role))
                .map(file -> folder.raw(file.name()))
                .findFirst()
                .orElse(null);
    }
}
