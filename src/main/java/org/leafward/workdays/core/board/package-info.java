/**
 * The problem as numbers: what a search turns over, what it is worth, and how an answer
 * becomes a plan with words again. Pure; knows no solver.
 */
@NullMarked
package org.leafward.workdays.core.board;

import org.jspecify.annotations.NullMarked;
