/** What a task asks of volunteers, from rule packs and {@code config/workdays}. */
@NullMarked
package org.leafward.workdays.effort;

import org.jspecify.annotations.NullMarked;
