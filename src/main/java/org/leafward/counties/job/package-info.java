/**
 * When gardens are tended and calendars built.
 */
@NullMarked
package org.leafward.counties.job;

import org.jspecify.annotations.NullMarked;
