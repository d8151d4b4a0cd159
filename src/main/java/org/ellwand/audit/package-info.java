/** The judge, the verdicts and the audit they make up. */
@NullMarked
package org.ellwand.audit;

import org.jspecify.annotations.NullMarked;
