/**
 * Addresses, and one entry for what several plants share: values in, values out.
 */
@NullMarked
package org.leafward.counties.core;

import org.jspecify.annotations.NullMarked;
