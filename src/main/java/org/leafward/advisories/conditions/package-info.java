/**
 * Conditions of the watch as files: read from config/advisories, checked, turned into the
 * values of the watch.
 */
@NullMarked
package org.leafward.advisories.conditions;

import org.jspecify.annotations.NullMarked;
