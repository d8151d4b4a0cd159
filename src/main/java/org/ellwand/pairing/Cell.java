package org.ellwand.pairing;

import java.util.List;
import java.util.Optional;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;
import org.ellwand.words.Remark;

/**
 * What one number is computed from: readings that are equal in every condition but insertion and take.
 *
 * @param session of all its readings
 * @param conditions what they have in common
 * @param insertions at least one
 * @param values what the numbers of the readings in place are
 * @param openEar takes of the open ear that belongs to them; empty where there is none
 * @param field takes of the field microphone; empty where there is none
 * @param openEarShiftDb to be added to the open ear, where it was measured at another level
 * @param notes what a reader must know of this cell
 */
public record Cell(
        Session session,
        Conditions conditions,
        List<Insertion> insertions,
        Reading.Values values,
        List<Reading> openEar,
        List<Reading> field,
        double openEarShiftDb,
        List<Remark> notes) {
    /**
     * Keeps copies of the lists.
     *
     * @param session of all its readings
     * @param conditions what they have in common
     * @param insertions at least one
     * @param values what the numbers of the readings in place are
     * @param openEar takes of the open ear that belongs to them
     * @param field takes of the field microphone
     * @param openEarShiftDb to be added to the open ear, where it was measured at another level
     * @param notes what a reader must know of this cell
     */
    public Cell {
        insertions = List.copyOf(insertions);
        openEar = List.copyOf(openEar);
        field = List.copyOf(field);
        notes = List.copyOf(notes);
    }

    /** {@return the unit of the causes that move the readings in place, dB or ms; empty where no declared cause does} */
    public Optional<Unit> movedBy() {
        return insertions.get(0).takes().get(0).movedBy();
    }

    /** {@return the test sound; empty where the readings name none} */
    public Optional<Stimulus> stimulus() {
        return session.stimulusOf(conditions);
    }

    /**
     * {@return this cell with one of its insertions only}
     *
     * @param key of the insertion
     * @throws IllegalArgumentException where the cell has no such insertion
     */
    public Cell only(String key) {
        Insertion insertion = insertions.stream()
                .filter(i -> i.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no insertion " + key));
        return new Cell(session, conditions, List.of(insertion), values, openEar, field, openEarShiftDb, notes);
    }

    /** {@return who wears it: head, ear and side together} */
    public String wearer() {
        return part("head") + "/" + part("ear") + "/" + part("side");
    }

    /**
     * {@return what a condition says; an empty text where it is not there}
     *
     * @param condition its name
     */
    public String part(String condition) {
        return conditions.get(condition).orElse("");
    }
}
