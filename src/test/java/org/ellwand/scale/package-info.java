/** Production lots of invented earplugs, as large as wanted, for measurements of speed and memory and for what a lot must show. */
package org.ellwand.scale;
