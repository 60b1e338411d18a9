/**
 * The look-alike key as values: causes, questions, what speaks for what, and the ranking
 * that follows from answers and the record.
 */
@NamedInterface("core")
@NullMarked
package org.leafward.lookalikes.core;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
