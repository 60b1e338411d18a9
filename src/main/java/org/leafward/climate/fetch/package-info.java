/**
 * Asks the sources outside: when each is due, one node at a time, and what came of it.
 */
@NullMarked
package org.leafward.climate.fetch;

import org.jspecify.annotations.NullMarked;
