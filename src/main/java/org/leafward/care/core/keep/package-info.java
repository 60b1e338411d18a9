/** What of a calculator's answer becomes figures of a planting, its site and its soil. */
@NullMarked
package org.leafward.care.core.keep;

import org.jspecify.annotations.NullMarked;
