/**
 * Dates of freezes, nights, heat, soil and ground at a station and their blend for a
 * place: values in, values out.
 */
@NullMarked
package org.leafward.climate.core;

import org.jspecify.annotations.NullMarked;
