/**
 * The calculators, as pages and under {@code /api}.
 */
@NullMarked
package org.leafward.amounts.web;

import org.jspecify.annotations.NullMarked;
