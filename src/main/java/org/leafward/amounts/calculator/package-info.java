/**
 * The calculators for those who keep their answers: asked again with figures that were
 * given once, and what figures those are.
 */
@NamedInterface("calculator")
@NullMarked
package org.leafward.amounts.calculator;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
