/**
 * What a group could do on which day, what it should, and why: values in, values out. The
 * search itself is behind {@link org.leafward.workdays.core.plan.CrewPlanner}.
 */
@NullMarked
package org.leafward.workdays.core.plan;

import org.jspecify.annotations.NullMarked;
