/** A year looked back on: what became of its tasks, and what was done. */
@NullMarked
package org.leafward.care.core.review;

import org.jspecify.annotations.NullMarked;
