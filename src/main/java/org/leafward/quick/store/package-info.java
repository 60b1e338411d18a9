/**
 * The tables of the quick calendars.
 */
@NullMarked
package org.leafward.quick.store;

import org.jspecify.annotations.NullMarked;
