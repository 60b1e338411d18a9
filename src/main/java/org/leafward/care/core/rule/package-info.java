/**
 * The rule language as values: what a rule pack says, free of files and of Spring.
 */
@NamedInterface("rule")
@NullMarked
package org.leafward.care.core.rule;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
