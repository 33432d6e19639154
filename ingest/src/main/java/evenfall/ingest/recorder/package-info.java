/**
 * Keeps what ports send: the bytes as they came, appended to files that are never written over, and the samples in them
 * for those who look on. {@link evenfall.ingest.recorder.WireRecorder} writes,
 * {@link evenfall.ingest.recorder.KeptRecording} reads what was kept, whole or cut short.
 */
@NullMarked
package evenfall.ingest.recorder;

import org.jspecify.annotations.NullMarked;
