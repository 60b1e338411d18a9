/**
 * Freeze dates, night and ground markers and their blend for a place: values in, values
 * out.
 */
@NullMarked
package org.leafward.climate.core;

import org.jspecify.annotations.NullMarked;
