package org.ellwand.audit;

import java.util.List;
import java.util.Optional;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Conditions;
import org.ellwand.statistics.Errors;
import org.ellwand.words.Remark;

/**
 * A figure to be judged: of one condition, of a comparison, or of a mean.
 *
 * @param value in the unit of the limit where it can be turned into it
 * @param errors absent where nothing tells the spread
 * @param contributions what makes up their uncertainty
 * @param count how many figures went into it
 * @param caps why nothing about it may be firmer than marginal
 */
record FigureCell(
        Conditions conditions,
        double value,
        Unit unit,
        Optional<Errors> errors,
        List<Contribution> contributions,
        int count,
        List<Remark> caps) {}
