package evenfall.ingest.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RefusalTest {

    /** Source of the numbers: errno-base.h of Linux and the system error codes of Windows. */
    @ParameterizedTest
    @CsvSource({
        "true, false, 11, is in use", // EAGAIN: locked
        "true, false, 16, is in use", // EBUSY
        "true, true, 5, is in use", // ERROR_ACCESS_DENIED: Windows says so of a port that is open
        "true, false, 13, may not be opened by this user", // EACCES
        "false, false, 0, may not be opened by this user",
        "true, false, 25, is no serial port", // ENOTTY
        "true, false, 21, is no serial port", // EISDIR
        "true, false, 5, has nothing behind it", // EIO
    })
    void eachReasonIsOneSentence(boolean allowed, boolean windows, int error, String words) {
        String sentence = Refusal.of("/dev/ttyUSB0", allowed, windows, error);

        assertThat(sentence)
                .contains("/dev/ttyUSB0")
                .contains(words)
                .endsWith(".")
                .doesNotContain("\n");
    }

    @Test
    void aMissingPortNamesThoseThatAreThere() {
        assertThat(Refusal.missing("COM3", List.of(new PortIdentity("COM4", "", "", -1, -1))))
                .contains("no port COM3")
                .contains("one that is there: COM4.");
        assertThat(Refusal.missing("COM3", List.of())).contains("no port is there now");
    }
}
