/**
 * The search for a good plan. The only package that knows the solver; what a plan is
 * worth is said by {@link org.leafward.workdays.core.board.Standing}, what it means by
 * {@link org.leafward.workdays.core.board.PlanReport}.
 */
@NullMarked
package org.leafward.workdays.solver;

import org.jspecify.annotations.NullMarked;
