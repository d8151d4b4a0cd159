package org.ellwand.measurement;

import org.ellwand.sound.RecordingNote;

/**
 * What is wrong with a recording of a session.
 *
 * @param conditions of the reading it belongs to; the session alone where it is the calibrator's
 * @param file relative to the audited folder
 * @param note what is wrong, and what follows from it
 */
public record RecordedNote(Conditions conditions, String file, RecordingNote note) {}
