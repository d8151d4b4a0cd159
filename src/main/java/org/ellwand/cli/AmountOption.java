package org.ellwand.cli;

import org.ellwand.amount.Amount;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** An option that takes a number with its unit. */
final class AmountOption {
    private AmountOption() {}

    /**
     * The number in a unit.
     *
     * @param example what is accepted, for the message
     * @throws ParameterException if the text is none, or of another kind
     */
    static double in(CommandSpec spec, String option, String text, Unit unit, String example) {
        try {
            Amount amount = Phrases.amount(text);
            if (amount.unit().dimension() == unit.dimension()) {
                return amount.in(unit);
            }
        } catch (PhraseException e) {
            throw wrong(spec, option, example, text);
        }
        throw wrong(spec, option, example, text);
    }

    private static ParameterException wrong(CommandSpec spec, String option, String example, String text) {
        return new ParameterException(
                spec.commandLine(), option + " takes a number with its unit as '" + example + "', not '" + text + "'");
    }
}
