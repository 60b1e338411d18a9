/** What the weather has to say about a workday. Pure. */
@NullMarked
package org.leafward.workdays.core.weather;

import org.jspecify.annotations.NullMarked;
