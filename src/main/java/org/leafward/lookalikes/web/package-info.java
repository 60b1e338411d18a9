/**
 * Pages of look-alikes.
 */
@NullMarked
package org.leafward.lookalikes.web;

import org.jspecify.annotations.NullMarked;
