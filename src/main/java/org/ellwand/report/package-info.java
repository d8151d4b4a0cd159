/** What is published: figures, pages, tables and the models that templates see. */
@NullMarked
package org.ellwand.report;

import org.jspecify.annotations.NullMarked;
