package evenfall.ingest.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: reference W1, W3 and W4 (W1 is the published check value of CRC-16/IBM-3740). */
class Crc16Test {

    /** W1. */
    @Test
    void thePublishedCheckValueComesOut() {
        byte[] digits = "123456789".getBytes(StandardCharsets.US_ASCII);

        assertThat(Crc16.of(digits, 0, digits.length)).isEqualTo(0x29B1);
    }

    /** W2 is the same polynomial started at 0: what this checksum must not be. */
    @Test
    void startingFromNothingGivesTheOtherPublishedValue() {
        int crc = 0;
        for (byte b : "123456789".getBytes(StandardCharsets.US_ASCII)) {
            crc = Crc16.with(crc, b);
        }

        assertThat(crc).isEqualTo(0x31C3);
    }

    /** W3. */
    @ParameterizedTest
    @CsvSource({"'', FFFF", "41, B915", "00, E1F0", "00000000, 84C0", "FFFF, 0000"})
    void shortMessages(String hex, String expected) {
        byte[] bytes = new byte[hex.length() / 2];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) Integer.parseInt(hex.substring(2 * i, 2 * i + 2), 16);
        }

        assertThat(Crc16.of(bytes, 0, bytes.length)).isEqualTo(Integer.parseInt(expected, 16));
    }

    /** W4. */
    @Test
    void theChecksumBehindItsMessageLeavesNothing() {
        byte[] message = "123456789__".getBytes(StandardCharsets.US_ASCII);
        message[9] = 0x29;
        message[10] = (byte) 0xB1;

        assertThat(Crc16.of(message, 0, message.length)).isZero();
    }
}
