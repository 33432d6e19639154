/**
 * Serial ports: opening one with a sentence where that fails, reading and writing bytes. Enter at
 * {@link evenfall.ingest.serial.SerialPorts}; the rest of the house sees only {@link evenfall.ingest.serial.Port}.
 */
@NullMarked
package evenfall.ingest.serial;

import org.jspecify.annotations.NullMarked;
