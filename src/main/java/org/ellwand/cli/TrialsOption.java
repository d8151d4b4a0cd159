package org.ellwand.cli;

import org.ellwand.audit.AuditOptions;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code --trials} of the commands that judge. */
final class TrialsOption {
    private static final int MOST = 10_000_000;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    private int trials = AuditOptions.DEFAULT_TRIALS;

    @Option(
            names = "--trials",
            paramLabel = "N",
            defaultValue = "" + AuditOptions.DEFAULT_TRIALS,
            description = "Monte Carlo trials (default: ${DEFAULT-VALUE}).")
    void trials(int asked) {
        if (asked < AuditOptions.FEWEST_TRIALS || asked > MOST) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--trials takes " + AuditOptions.FEWEST_TRIALS + " to " + MOST + ", not " + asked);
        }
        trials = asked;
    }

    int number() {
        return trials;
    }
}
